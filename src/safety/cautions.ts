import type { Feed, JobEvent, MeasureMode } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, PartKind } from "../board/board.ts";

/** One caution: what a careful bench does without thinking, at the step it concerns. */
interface Caution {
  readonly id: string;
  readonly words: string;
  /** where the fact comes from */
  readonly source: string;
}

const LAW =
  "Local codes and the rules for licensed electrical work come first; where they say otherwise, follow them.";

const CAUTIONS = {
  unplugAndWait: {
    id: "unplug-and-wait",
    words: "Unplug it and wait.",
    source: "common practice",
  },
  voltageProof: {
    id: "voltage-proof",
    words:
      "Highest DC range, one hand, probes on the capacitor's own pins: bleeders and dark LEDs prove nothing.",
    source: "common practice",
  },
  notAScrewdriver: {
    id: "resistor-not-screwdriver",
    words:
      "Discharge through the resistor with insulated clips, never with a screwdriver; the resistor gets hot.",
    source: "common practice",
  },
  resistorHot: {
    id: "resistor-hot",
    words: "The resistor may still be hot: hold it by its insulated clips.",
    source: "common practice",
  },
  unplugFirst: {
    id: "unplug-first",
    words: "Switch off, pull the plug, and count the bus as charged until it has been measured again.",
    source: "common practice",
  },
  heldSafe: {
    id: "still-empty",
    words:
      "The bus can creep back up: if anything was left a while, measure its volts again before touching.",
    source: "dielectric absorption, from memory",
  },
  stillCharged: {
    id: "still-charged",
    words:
      "What has been powered counts as charged: prove every capacitor empty once more before it is packed or handed over.",
    source: "common practice",
  },
  hotIron: {
    id: "hot-iron",
    words: "Hot iron and fumes: eye protection and extraction; gloves for burnt resin.",
    source: "common practice",
  },
  dryBeforePower: {
    id: "dry-before-power",
    words: "Take a picture first. No power until it is fully dry: hours of warm air, not minutes.",
    source: "common practice",
  },
  padsLift: {
    id: "pads-lift",
    words: "Pads lift, most of all on single-sided boards: add fresh solder, preheat, do not pull.",
    source: "from memory",
  },
  insulationBack: {
    id: "insulation-back",
    words: "Fit the same insulation pad and fresh paste as before; then check the tab against the heatsink.",
    source: "common practice",
  },
  powerUp: {
    id: "power-up",
    words:
      "Hands off while it is live: clip meters on before power, cover the board, wear eye protection, parts can burst. Bus minus is at mains potential.",
    source: "common practice",
  },
  isolation: {
    id: "isolate-the-unit",
    words: "Isolate the board under test, not the instrument; an RCD helps but is no licence to touch.",
    source: "common practice among repairers",
  },
  lampLimit: {
    id: "lamp-limits-mains-only",
    words: "The lamp limits what the mains gives, not the energy stored in the bus capacitors.",
    source: "computed: the stored energy does not pass through the lamp",
  },
  benchPolarity: {
    id: "bench-polarity",
    words: "Check the polarity twice and never exceed the rail's own voltage.",
    source: "common practice",
  },
  noInsulationTester: {
    id: "no-insulation-tester",
    words: "No insulation tester on a populated board: it kills chips and over-volts capacitors.",
    source: "common practice",
  },
} as const satisfies Record<string, Caution>;

type CautionName = keyof typeof CAUTIONS;

/** What of an action decides its cautions. */
interface CautionedAction {
  readonly do: JobEvent["do"];
  readonly mode?: MeasureMode;
  readonly feed?: Feed;
  /** a reading on a powered board */
  readonly live?: boolean;
  /** the part handled, where it is one */
  readonly part?: string;
}

/** Kinds that sit on a heatsink or come off as many pins (common practice). */
const ON_A_HEATSINK: ReadonlySet<PartKind> = new Set([
  "module",
  "igbt",
  "mosfet",
  "bridge",
  "thyristor",
  "triac",
  "regulator",
]);

/** Actions of the same kind carry the same cautions, but for what only a part on a heatsink needs; a hand inside a mains board always carries the local-codes line. */
function cautionNames(action: CautionedAction, kind: PartKind | undefined): readonly CautionName[] {
  switch (action.do) {
    case "measure":
      if (action.live === true) return ["powerUp"];
      if (action.mode === "dcv" || action.mode === "acv") return ["unplugAndWait", "voltageProof"];
      return action.mode === "ohms" ? ["heldSafe", "noInsulationTester"] : ["heldSafe"];
    case "clip":
      return ["notAScrewdriver"];
    case "unclip":
      return ["resistorHot"];
    case "unpower":
      return ["unplugFirst"];
    case "clean":
      return ["dryBeforePower"];
    case "lift":
    case "refit":
    case "resolder":
      return ["heldSafe", "hotIron"];
    case "remove":
    case "restore":
      return ["heldSafe", "hotIron", "padsLift"];
    case "replace":
      return kind !== undefined && ON_A_HEATSINK.has(kind)
        ? ["heldSafe", "hotIron", "padsLift", "insulationBack"]
        : ["heldSafe", "hotIron", "padsLift"];
    case "close":
      return ["stillCharged"];
    case "power":
      if (action.feed === "lamp") return ["powerUp", "isolation", "lampLimit"];
      return action.feed === "bench" ? ["powerUp", "benchPolarity"] : ["powerUp", "isolation"];
    default:
      return [];
  }
}

/** Dangers that also call on local codes and licensed practice. */
const UNDER_LAW: ReadonlySet<JobEvent["do"]> = new Set(["power", "unpower", "clip"]);

function takesVolts(action: CautionedAction): boolean {
  return action.do === "measure" && (action.mode === "dcv" || action.mode === "acv");
}

/**
 * Cautions about the state of the board that need no second saying while it has not changed: who has measured cold since the stores were
 * last proven empty has read them. A hand inside with an iron takes minutes, so it hears of the bus each time.
 */
const SAID_ONCE: ReadonlySet<CautionName> = new Set(["unplugAndWait", "heldSafe", "noInsulationTester"]);

function kindOfPart({ part }: CautionedAction, board: Board): PartKind | undefined {
  return part === undefined ? undefined : board.parts.get(part)?.kind;
}

/** Cautions that a measurement carried since power was last on; a voltage reading after it begins anew what is said of the bus. */
function alreadySaid(board: Board, { entries }: Timeline): ReadonlySet<CautionName> {
  const said = new Set<CautionName>();
  for (const { event } of entries) {
    if (event.do === "power") said.clear();
    if (event.do !== "measure") continue;
    if (takesVolts(event)) said.delete("heldSafe");
    for (const name of cautionNames(event, kindOfPart(event, board))) if (SAID_ONCE.has(name)) said.add(name);
  }
  return said;
}

/**
 * The cautions of a step at this point of the job, in plain words: those of all its actions together, less what was said at a measurement
 * before and still holds. Empty where the step hurts nobody.
 * @param actions - the action and the row that goes with it
 */
export function cautionsNow(
  actions: readonly CautionedAction[],
  board: Board,
  timeline: Timeline,
): readonly string[] {
  const said = alreadySaid(board, timeline);
  const names = actions.flatMap((action) =>
    cautionNames({ ...action, live: timeline.now.powered }, kindOfPart(action, board)).filter(
      (name) => action.do !== "measure" || !said.has(name),
    ),
  );
  const words: string[] = [...new Set(names)].map((name) => CAUTIONS[name].words);
  return actions.some((action) => UNDER_LAW.has(action.do) || takesVolts(action)) ? [...words, LAW] : words;
}
