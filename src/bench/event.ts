/** The events of a job's log, exactly as `faultwright-job/1` spells them. A place is a net name or `REF.pin`. */
import type { ReferenceMode } from "../board/board.ts";

export type Place = string;
export type ColdMode = "diode" | "continuity" | "ohms" | "farads";
export type LiveMode = "dcv" | "acv" | "amps" | "temperature";
export type MeasureMode = ColdMode | LiveMode;
/** Coarse answers that a gloved thumb can give for any cold mode. */
export type CoarseReading = "zero" | "junction" | "high";
export type Reading = number | "OL" | "beep" | "silent" | CoarseReading;
export type Finding = "clean" | "burnt" | "bulged" | "cracked" | "corroded" | "wet" | "lifted-pad" | "other";
export type Feed = "mains" | "lamp" | "bench";
export type Observed =
  | "quiet"
  | "runs"
  | "lamp-dark"
  | "lamp-dim"
  | "lamp-bright"
  | "lamp-pulsing"
  | "limiting"
  | "fuse-blew"
  | "trip"
  | "smoke";
/** What a job that is put aside waits for: the board to dry, a part to come, the customer's yes. */
export type WaitsFor = "drying" | "part" | "answer";
/** The board's own load (its motor, its coil and pan), or the watts of a dummy in its place. */
export type RunLoad = "own" | number;
export type Verdict = "repaired" | "not-economic" | "not-repairable" | "no-fault" | "declined";

/** What the customer was offered, and what came of it. */
export type OfferName = "repair" | "replace" | "decline";
export type QuoteAnswer = "accepted" | "refused";

/** How a part of this very board stands to the board file: missing, another than drawn, not sure of it, or as drawn after all. */
export type PartMark = "absent" | "different" | "unsure" | "as-drawn";

/**
 * The proof that every store of charge is empty, the resistor still clipped on before power, the readings of a motor before it is driven,
 * or nothing but the step proposed.
 */
export type Overruled = "proof" | "resistor" | "motor" | "proposal";

interface Stamp {
  readonly id?: string;
  /** RFC 3339 */
  readonly at?: string;
  readonly who?: string;
}

export interface MeasureEvent extends Stamp {
  readonly do: "measure";
  readonly mode: MeasureMode;
  readonly red?: Place;
  readonly black?: Place;
  /** for `temperature` */
  readonly part?: string;
  readonly ambient?: number;
  readonly by?: "contact" | "spot" | "camera";
  readonly reading: Reading;
  readonly settling?: "climbing";
  readonly afterPower?: number;
  readonly wires?: 4;
  /** taken off the wire, not typed: how the instrument calls itself */
  readonly instrument?: string;
}
/** A settled cold reading of a good board of the same number, whole, that lies beside the one on the bench. */
export interface BesideEvent extends Stamp {
  readonly do: "beside";
  readonly mode: ReferenceMode;
  readonly red: Place;
  readonly black: Place;
  readonly reading: number | "OL";
}
export interface CalibrateEvent extends Stamp {
  readonly do: "calibrate";
  readonly mode: MeasureMode;
  readonly known: number;
  readonly reading: number;
}
export interface LookEvent extends Stamp {
  readonly do: "look";
  readonly part: string;
  readonly finding: Finding;
}
export interface CleanEvent extends Stamp {
  readonly do: "clean" | "resolder";
  readonly part?: string;
  readonly stage?: string;
  readonly dried?: true;
}
export interface LiftEvent extends Stamp {
  readonly do: "lift" | "refit";
  readonly place: Place;
}
export interface RemoveEvent extends Stamp {
  readonly do: "remove" | "restore";
  readonly part: string;
}
/** Where a part lay: in a place of the shop's, and the donor board that it is on or came from. Both may be silent. */
export interface StockPlace {
  readonly place?: string;
  readonly donor?: string;
}
export interface ReplaceEvent extends Stamp {
  readonly do: "replace";
  readonly part: string;
  readonly with?: string;
  readonly price?: number;
  readonly used?: true;
  /** where the shop's stock had it: one is taken out there */
  readonly from?: StockPlace;
}
/** A reading of the part that is to go in at `part`, taken before it does: between two of its pins, by their names. */
export interface IncomingEvent extends Stamp {
  readonly do: "incoming";
  readonly part: string;
  readonly mode: ColdMode;
  readonly red: string;
  readonly black: string;
  readonly reading: Reading;
}
export interface ClipEvent extends Omit<Stamp, "at"> {
  readonly do: "clip" | "unclip";
  readonly at: readonly [Place, Place];
  readonly ohms: number;
}
export interface PowerEvent extends Omit<Stamp, "at"> {
  /** for `bench` the two places [plus, minus] the supply is clipped to; elsewhere the time */
  readonly at?: readonly [Place, Place] | string;
  readonly do: "power";
  readonly feed: Feed;
  readonly watts?: number;
  readonly volts?: number;
  readonly limitAmps?: number;
  /** for `bench`: a resistor in series with the source, as for a cell */
  readonly ohms?: number;
  readonly observed?: Observed | readonly Observed[];
  /** what it was told to drive; absent: it was told nothing */
  readonly load?: RunLoad;
  /** parts that give a sign of life (a light, an inrush relay, a fan): did it come on within some seconds? Left out: not looked at */
  readonly signs?: Readonly<Record<string, boolean>>;
  /** pairs of places that meters were clipped across before power: what can be read with the hands off */
  readonly meters?: readonly (readonly [Place, Place])[];
}
export interface UnpowerEvent extends Stamp {
  readonly do: "unpower";
  /** what the board did up to then: `runs` where it ran until it was switched off */
  readonly observed?: Observed | readonly Observed[];
  /** seconds since power came on */
  readonly afterPower?: number;
}
export interface AnswerEvent extends Stamp {
  readonly do: "answer";
  readonly question: string;
  readonly answer: string;
}
export interface MarkEvent extends Stamp {
  readonly do: "mark";
  readonly part: string;
  readonly as: PartMark;
}
export interface NoteEvent extends Stamp {
  readonly do: "note";
  readonly text: string;
  /** a motor or fan that turned while it was plugged in: what turns charges the bus */
  readonly turned?: string;
  /** nothing is to be learnt from this job, and why stands in `text` */
  readonly leftOut?: true;
}
export interface OverruleEvent extends Stamp {
  readonly do: "overrule";
  readonly why: string;
  /** what is overruled; left out: whatever stands in the way of the next event */
  readonly of?: Overruled;
}
export interface UndoEvent extends Stamp {
  readonly do: "undo";
  readonly of: string;
}
/** The customer's answer to a quote; sums in the job's currency, before tax. */
export interface QuoteEvent extends Stamp {
  readonly do: "quote";
  readonly offer: OfferName;
  /** what it comes to; a repaired board is not billed below it */
  readonly price?: number;
  /** not above this without asking again; left out: the price is one */
  readonly cap?: number;
  readonly answer: QuoteAnswer;
}
/** The job is put aside: it costs no bench minutes until it is taken up again. */
export interface WaitEvent extends Stamp {
  readonly do: "wait";
  readonly for: WaitsFor;
  /** which part, or what was asked, in the shop's own words */
  readonly what?: string;
}
/** Taken up again. */
export interface ResumeEvent extends Stamp {
  readonly do: "resume";
}
export interface CloseEvent extends Stamp {
  readonly do: "close";
  readonly verdict: Verdict;
  /** parts fitted in this job that came off again and went back into stock as pulled */
  readonly shelved?: readonly string[];
}

export type JobEvent =
  | MeasureEvent
  | BesideEvent
  | CalibrateEvent
  | LookEvent
  | CleanEvent
  | LiftEvent
  | RemoveEvent
  | ReplaceEvent
  | IncomingEvent
  | ClipEvent
  | PowerEvent
  | UnpowerEvent
  | AnswerEvent
  | MarkEvent
  | NoteEvent
  | OverruleEvent
  | UndoEvent
  | QuoteEvent
  | WaitEvent
  | ResumeEvent
  | CloseEvent;
