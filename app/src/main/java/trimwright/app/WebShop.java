package trimwright.app;

import java.io.IOException;
import trimwright.command.ShopServer;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/** The shop in the browser as the command line wants it. */
final class WebShop implements ShopServer.RunningShop {
  private final RunningShop shop;

  private WebShop(RunningShop shop) {
    this.shop = shop;
  }

  /**
   * Opens the shop.
   *
   * @throws IOException if no port near the wished one is free
   */
  static ShopServer.RunningShop open(ShopServer.Start start) throws IOException {
    try {
      return new WebShop(ShopApplication.start(start.preferredPort(), start.folder()));
    } catch (IllegalStateException noPort) {
      throw new IOException(noPort.getMessage(), noPort);
    }
  }

  @Override
  public String address() {
    return shop.address().toString();
  }

  @Override
  public void awaitStop() throws InterruptedException {
    shop.awaitClose();
  }
}
