package trimwright.kernel.rig;

/** Where the masses of a setup are, in foil axes. */
final class CraftMasses {
  private CraftMasses() {}

  /** Board and battery. */
  static Moments onDeck(Setup s, Deck deck) {
    Board board = s.board();
    Moments sum =
        Moments.NONE.plus(
            board.mass(),
            deck.aheadInFoil(board.massCentreAhead() - board.track(), board.massCentreBelowDeck()),
            deck.aboveInFoil(board.massCentreAhead() - board.track(), board.massCentreBelowDeck()));
    if (s.battery().isPresent()) {
      Battery b = s.battery().get();
      double along = b.massCentreAhead() - board.track();
      sum =
          sum.plus(
              b.mass(),
              deck.aheadInFoil(along, b.massCentreBelowDeck()),
              deck.aboveInFoil(along, b.massCentreBelowDeck()));
    }
    return sum;
  }

  /** Mast, drive, fuselage and wings. */
  static Moments foil(Setup s) {
    Mast m = s.mast();
    Moments sum =
        Moments.NONE.plus(m.mass(), -m.massAboveAxis() * Math.tan(m.rake()), m.massAboveAxis());
    if (s.drive().isPresent()) {
      Drive d = s.drive().get();
      sum = sum.plus(d.mass(), s.podAhead(), d.massAboveAxis());
    }
    Fuselage f = s.fuselage();
    sum = sum.plus(f.mass(), Craft.fuselageMiddle(f), f.massAboveAxis());
    FittedWing w = s.frontWing();
    sum = sum.plus(w.mass(), f.frontWingAhead(), w.massAboveAxis());
    FittedWing t = s.stabilizer();
    return sum.plus(t.mass(), -f.stabilizerBehind(), t.massAboveAxis());
  }
}
