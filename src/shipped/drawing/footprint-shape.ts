/** What every drawn part says of itself, in millimetres from its upper left corner. */

/** A pad of a part; `open`: a probe reaches it from the parts' side, not only from the solder side. */
export interface Leg {
  readonly pin: string;
  readonly x: number;
  readonly y: number;
  readonly open: boolean;
}

export interface Footprint {
  readonly width: number;
  readonly height: number;
  /** SVG of body and pads, drawn from the upper left corner; the reference is written by whoever places it */
  readonly svg: string;
  readonly legs: readonly Leg[];
  /** where the reference goes, and on what: board or body */
  readonly name: {
    readonly x: number;
    readonly y: number;
    readonly size: number;
    readonly on: "board" | "body";
  };
  /** its legs go through the board */
  readonly through: boolean;
}
