/** Sheets that papers are printed on. */
export const PAPER_SIZES = ["a4", "letter", "label"] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

interface Sheet {
  /** points: 1/72 inch */
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  /** of the letters, beside a whole sheet's */
  readonly scale: number;
}

/** ISO 216 and ANSI sheets; a label is 100 mm by 62 mm, a usual roll of label printers (common practice). */
export const SHEETS: Readonly<Record<PaperSize, Sheet>> = {
  a4: { width: 595.28, height: 841.89, margin: 50, scale: 1 },
  letter: { width: 612, height: 792, margin: 50, scale: 1 },
  label: { width: 283.46, height: 175.75, margin: 12, scale: 0.72 },
};
