package trimwright.exchange.read.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RecentTest {
  @Test
  void makesAValueOnce() {
    Recent<String, Object> recent = new Recent<>(2);
    AtomicInteger made = new AtomicInteger();
    Object first = recent.get("a", made::incrementAndGet);
    assertThat(recent.get("a", made::incrementAndGet)).isSameAs(first);
    assertThat(recent.find("b")).isEmpty();
    assertThat(made).hasValue(1);
  }

  @Test
  void theOneLongestUnusedGoes() {
    Recent<String, Integer> recent = new Recent<>(2);
    recent.get("a", () -> 1);
    recent.get("b", () -> 2);
    recent.get("a", () -> 3);
    recent.get("c", () -> 4);
    assertThat(recent.size()).isEqualTo(2);
    assertThat(recent.find("a")).contains(1);
    assertThat(recent.find("b")).isEmpty();
  }

  @Test
  void keepsNothingOfAFailure() {
    Recent<String, Integer> recent = new Recent<>(2);
    assertThatThrownBy(
            () ->
                recent.get(
                    "a",
                    () -> {
                      throw new IllegalArgumentException("no");
                    }))
        .hasMessage("no");
    assertThat(recent.get("a", () -> 7)).isEqualTo(7);
  }

  @Test
  void threadsShareOneValueAndTheBoundHolds() throws Exception {
    Recent<Integer, Object> recent = new Recent<>(8);
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Callable<Object>> tasks =
          IntStream.range(0, 2_000)
              .<Callable<Object>>mapToObj(i -> () -> recent.get(i % 16, Object::new))
              .toList();
      for (Future<Object> done : threads.invokeAll(tasks)) {
        assertThat(done.get()).isNotNull();
      }
    } finally {
      threads.shutdown();
    }
    assertThat(recent.size()).isEqualTo(8);
  }
}
