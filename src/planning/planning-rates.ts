/** Every number the planner assumes, with where it comes from. Money and time of parts stand in `money/`. */
export const PLANNING_RATES = {
  /** Hypotheses weighed one by one; the rest is carried as one lump per explanation. Bound on work, not a fact. */
  hypotheses: 160,
  /** Sets weighed with what stands beside them, the share of probability at which the list may end, and the share from which an
   *  explanation is such a set by itself. Bounds on work. */
  cores: 14,
  coreShare: 0.985,
  stemShare: 0.06,
  /** Hypotheses by which the candidate checks are screened, and checks that are then weighed with all. Bounds on work. */
  screenedHypotheses: 56,
  screenedChecks: 40,
  /** From this weight on a silent fault is asked about beside its explanation; below, it counts where it shows by itself. Bound on work. */
  besideAsked: 0.005,
  /** Bench minutes that finding out costs per bit still unknown about what to replace. From memory: a check of 0.4
   *  minutes gives a fifth of a bit on the average; isolating a part takes 5-10 minutes for about a bit. */
  minutesPerBit: 3,
  /** Two outcomes are told apart when they differ by this many combined spreads. Statistics: the half way between is 1.4
   *  deviations from either, which 8 % pass; at 3 an open capacitor of a bank of four could not be told from its tolerance. */
  tellApartSpreads: 2,
  /** What no calculation of spread covers: probe contact, the last digits. From memory. */
  floorVolts: 0.01,
  /** last digit of a bench supply's display, amps */
  floorAmps: 0.005,
  floorOhms: 0.15,
  floorFarads: 1e-10,
  floorShare: 0.03,
  /** A single reading is a probe slip this often; no answer is believed beyond it. From memory. */
  slip: 0.01,
  /** A part that nothing has named yet: price and minutes of curing it, from memory (a small part of section 5 of the
   *  trade notes, and the ten minutes a replacement takes). */
  unlistedMoney: 2,
  unlistedMinutes: 15,
  /** An action that costs this share of the agreed price shows what could waste the money (the design's rule). */
  spendingShare: 0.1,
  /** Least net gain, in minutes of bench time, for which a step is worth naming. Below it the sum is noise. */
  leastGainMinutes: 0.25,
  /** A reading on the part in hand goes first when it is worth this share of the best step. From memory. */
  inHandShare: 0.7,
  /** Parts weighed for a lift, a look or a removal. Bound on work. */
  handledParts: 16,
  /** A cure of a plan's step less probably needed than this waits until the surer ones are done. From memory. */
  cureAt: 0.1,
  /** A guess less probable than this is not made even where nothing else is left. From memory. */
  guessAt: 0.03,
  /** Minutes that cleaning and drying a place, and making a part's joints anew, take of the hour (the format counts none).
   *  From memory. */
  cleanMinutes: 4,
  resolderMinutes: 2,
  /** Least chance of being faulty at which a part is replaced without first being taken in hand. From memory. */
  replaceAt: 0.5,
} as const;
