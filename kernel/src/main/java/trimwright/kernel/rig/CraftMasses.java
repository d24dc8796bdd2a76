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

  /**
   * Moment of inertia of board, battery and foil about the datum [kg·m²]. Board, mast, fuselage and
   * pod turn as even bars of their lengths; battery and wings are points: a battery's own length is
   * not in a case.
   */
  static double inertia(Setup s, Deck deck) {
    Board b = s.board();
    double sum =
        b.mass()
            * (onDeck(deck, b.massCentreAhead() - b.track(), b.massCentreBelowDeck())
                + bar(b.length()));
    if (s.battery().isPresent()) {
      Battery battery = s.battery().get();
      sum +=
          battery.mass()
              * onDeck(deck, battery.massCentreAhead() - b.track(), battery.massCentreBelowDeck());
    }
    Mast m = s.mast();
    sum +=
        m.mass()
            * (square(m.massAboveAxis() * Math.tan(m.rake()), m.massAboveAxis()) + bar(m.length()));
    if (s.drive().isPresent()) {
      Drive d = s.drive().get();
      sum += d.mass() * (square(s.podAhead(), d.massAboveAxis()) + bar(d.length()));
    }
    Fuselage f = s.fuselage();
    sum += f.mass() * (square(Craft.fuselageMiddle(f), f.massAboveAxis()) + bar(f.length()));
    FittedWing w = s.frontWing();
    sum += w.mass() * square(f.frontWingAhead(), w.massAboveAxis());
    FittedWing t = s.stabilizer();
    return sum + t.mass() * square(f.stabilizerBehind(), t.massAboveAxis());
  }

  private static double onDeck(Deck deck, double along, double below) {
    return square(deck.aheadInFoil(along, below), deck.aboveInFoil(along, below));
  }

  private static double square(double ahead, double above) {
    return ahead * ahead + above * above;
  }

  private static double bar(double length) {
    return length * length / 12;
  }
}
