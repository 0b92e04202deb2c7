/** The job's money, as the job file gives it. Prices in the job's currency. */
export interface Terms {
  readonly currency: string;
  readonly ratePerHour: number;
  readonly agreedPrice: number;
  readonly newBoardPrice: number;
  readonly feeIfNotRepaired: number;
  readonly comebackCost: number;
  /** false where `agreedPrice` is the shop's usual one and the customer has agreed none yet */
  readonly agreed: boolean;
}

/** The job file format's defaults, also the shop's usual terms until it sets its own. */
export const DEFAULT_TERMS: Terms = {
  currency: "EUR",
  ratePerHour: 30,
  agreedPrice: 140,
  newBoardPrice: 260,
  feeIfNotRepaired: 0,
  comebackCost: 30,
  agreed: false,
};
