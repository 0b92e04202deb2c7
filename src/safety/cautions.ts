import type { Feed, JobEvent, MeasureMode, Place } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, PartKind } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";

/** One caution: what a careful bench does without thinking, at the step it concerns. */
interface Caution {
  readonly words: string;
  /** where the fact comes from */
  readonly source: string;
}

const CAUTIONS = {
  unplugAndWait: {
    words: said`Unplug it and wait 5 to 15 minutes: what is stored does not need the mains.`,
    source: "makers ask for 5 to 15 minutes, second-hand",
  },
  meterCategory: {
    words: said`Meter and leads marked CAT III, or CAT II at least, for these volts.`,
    source:
      "IEC 61010-1 measurement categories: CAT II from the plug to the unit's power circuits, second-hand",
  },
  voltageProof: {
    words: said`Highest DC range, one hand, probes on the capacitor's own pins: bleeders and dark LEDs prove nothing.`,
    source: "common practice",
  },
  notAScrewdriver: {
    words: said`Discharge through the resistor with insulated clips, never with a screwdriver; the resistor gets hot.`,
    source: "common practice",
  },
  resistorHot: {
    words: said`The resistor may still be hot: hold it by its insulated clips.`,
    source: "common practice",
  },
  unplugFirst: {
    words: said`Switch off, pull the plug, and count the bus as charged until it has been measured again.`,
    source: "common practice",
  },
  heldSafe: {
    words: said`The bus can creep back up, a large capacitor to 10 to 50 V: if anything was left a while, measure its volts again before touching.`,
    source: "dielectric absorption, from memory",
  },
  ownCharge: {
    words: said`A capacitor may hold charge in the hand too: empty it through the resistor before it goes in.`,
    source: "common practice",
  },
  turnsCharge: {
    words: said`Do not turn the motor or a fan while it is plugged in: it charges the bus. If it turned, say so.`,
    source: "common practice: it generates through the diodes of the power switches",
  },
  testMotorAlone: {
    words: said`An insulation tester goes on the motor alone: plug out, its leads joined, against its frame. Never on the board.`,
    source: "common practice",
  },
  noInsulationTester: {
    words: said`No insulation tester on a populated board: it kills chips and over-volts capacitors.`,
    source: "common practice",
  },
  stillCharged: {
    words: said`What has been powered counts as charged: prove every capacitor empty once more before it is packed or handed over.`,
    source: "common practice",
  },
  hotIron: {
    words: said`Hot iron and fumes: eye protection and extraction; gloves for burnt resin.`,
    source: "common practice",
  },
  dryBeforePower: {
    words: said`Take a picture first. No power until it is fully dry: hours of warm air, not minutes.`,
    source: "common practice",
  },
  padsLift: {
    words: said`Pads lift, most of all on single-sided boards: add fresh solder, preheat, do not pull.`,
    source: "from memory",
  },
  insulationBack: {
    words: said`Fit the same insulation pad and fresh paste as before; then check the tab against the heatsink.`,
    source: "common practice",
  },
  powerUp: {
    words: said`Hands off while it is live: clip meters on before power, cover the board, wear eye protection, parts can burst.`,
    source: "common practice",
  },
  hotGround: {
    words: said`Bus minus is at mains potential, and a heatsink may be.`,
    source: "common practice",
  },
  isolated: {
    words: said`The isolation transformer feeds this board alone and passes no earth on; a residual-current breaker (RCD) behind it does nothing.`,
    source: "common practice among repairers",
  },
  notIsolated: {
    words: said`Best is an isolation transformer for the board alone. A residual-current breaker (RCD) helps, but it does not see a touch across the bus or from line to neutral.`,
    source: "common practice among repairers",
  },
  scopeEarth: {
    words: said`No earth clip of the oscilloscope on bus minus, which is a short: isolate the board, never the instrument, or use a differential probe.`,
    source: "common practice",
  },
  lampLimit: {
    words: said`The lamp limits what the mains gives, not the energy stored in the bus capacitors.`,
    source: "computed: the stored energy does not pass through the lamp",
  },
  benchPolarity: {
    words: said`Check the polarity twice and never exceed the rail's own voltage.`,
    source: "common practice",
  },
  limitFirst: {
    words: said`Volts and current limit are set with the output off, then it is clipped on: 0.4 V at most to begin with.`,
    source: "common practice",
  },
  ceramicsBurst: {
    words: said`A shorted ceramic or tantalum that is fed can crack, burst or glow: low volts first, output off at the first smell or smoke.`,
    source: "common practice",
  },
  onlyRead: {
    words: said`Hands off while it is live: only read the meter that hangs on it.`,
    source: "common practice",
  },
  law: {
    words: said`Local codes and the rules for licensed electrical work come first; where they say otherwise, follow them.`,
    source: "common practice",
  },
} as const satisfies Record<string, Caution>;

type CautionName = keyof typeof CAUTIONS;

/** What of an action decides its cautions. */
interface CautionedAction {
  readonly do: JobEvent["do"];
  readonly mode?: MeasureMode;
  readonly feed?: Feed;
  readonly volts?: number;
  /** where a supply is clipped on, or the time */
  readonly at?: unknown;
  readonly wires?: 4;
  /** the part handled, or the pin, where it is one */
  readonly part?: string;
  readonly place?: Place;
  /** what is asked, of an answer */
  readonly question?: string;
}

/** Where the action is taken. */
interface Around {
  readonly board: Board;
  readonly live: boolean;
  readonly equipment: readonly string[];
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

/** The cautions of one action, the weightiest first. */
function cautionNames(action: CautionedAction, around: Around): readonly CautionName[] {
  switch (action.do) {
    case "measure":
      if (around.live) return ["onlyRead"];
      if (takesVolts(action)) return ["unplugAndWait", "voltageProof", "meterCategory", "law"];
      return read(action, around);
    case "answer":
      return action.question === MOTOR_INSULATION.question ? ["testMotorAlone", "noInsulationTester"] : [];
    case "clip":
      return ["notAScrewdriver", "law"];
    case "unclip":
      return ["resistorHot"];
    case "unpower":
      return ["unplugFirst", "law"];
    case "clean":
      return ["heldSafe", "dryBeforePower"];
    case "resolder":
      return ["heldSafe", "hotIron"];
    case "lift":
    case "refit":
    case "remove":
    case "restore":
    case "replace":
      return handled(action, around.board);
    case "close":
      return ["stillCharged"];
    case "power":
      return [...powered(action, around), "law"];
    default:
      return [];
  }
}

/** A reading of a dead board. Milliohms without a meter for them are a current fed in by hand. */
function read({ mode, wires }: CautionedAction, { equipment }: Around): readonly CautionName[] {
  if (mode !== "ohms") return ["heldSafe"];
  return wires === 4 && !equipment.includes("milliohm-meter")
    ? ["heldSafe", "limitFirst", "benchPolarity", "noInsulationTester"]
    : ["heldSafe", "noInsulationTester"];
}

/** A part is taken off, put on, or one pin of it. What pulls off by its plug needs no iron. */
function handled(action: CautionedAction, { parts }: Board): readonly CautionName[] {
  const ref = action.part ?? action.place?.slice(0, action.place.indexOf("."));
  const part = ref === undefined ? undefined : parts.get(ref);
  const off = action.do === "lift" || action.do === "remove";
  const names: CautionName[] = ["heldSafe"];
  if (part?.kind === "motor") names.push(off ? "testMotorAlone" : "turnsCharge");
  if (part?.kind === "capacitor" && !off) names.push("ownCharge");
  if (part?.plugged === true) return names;
  names.push("hotIron");
  if (action.do !== "lift" && action.do !== "refit") names.push("padsLift");
  if (action.do === "replace" && part !== undefined && ON_A_HEATSINK.has(part.kind))
    names.push("insulationBack");
  return names;
}

function powered(action: CautionedAction, { equipment }: Around): readonly CautionName[] {
  const { feed } = action;
  if (isInjection(action)) return ["limitFirst", "ceramicsBurst", "benchPolarity", "powerUp"];
  if (feed === "bench") return ["powerUp", "benchPolarity"];
  const names: CautionName[] = ["powerUp", "hotGround"];
  names.push(equipment.includes("isolation-transformer") ? "isolated" : "notIsolated");
  if (equipment.includes("oscilloscope")) names.push("scopeEarth");
  if (feed === "lamp") names.push("lampLimit");
  return names;
}

function takesVolts(action: CautionedAction): boolean {
  return action.do === "measure" && (action.mode === "dcv" || action.mode === "acv");
}

/** An iron takes minutes, in which a capacitor recovers: of that it is told each time. */
function saidAgain(name: CautionName, action: CautionedAction): boolean {
  return name === "heldSafe" && action.do !== "measure";
}

/**
 * What was said at steps that were done since power last changed, and so holds still. A step that followed an overrule was the
 * technician's own, at which nothing was said; a voltage reading begins anew what is said of the bus.
 */
function alreadySaid(around: Around, { entries }: Timeline): ReadonlySet<CautionName> {
  const said = new Set<CautionName>();
  for (const [at, { event, before }] of entries.entries()) {
    if (event.do === "power" || event.do === "unpower") said.clear();
    if (entries[at - 1]?.event.do === "overrule") continue;
    if (takesVolts(event)) said.delete("heldSafe");
    if (event.do === "unpower") continue;
    for (const name of cautionNames(event, { ...around, live: before.powered })) said.add(name);
  }
  return said;
}

/**
 * The cautions of a step at this point of the job, in plain words: those of all its actions together, less what was said since power
 * last changed and still holds. Empty where the step hurts nobody.
 * @param actions - the action and the row that goes with it
 * @param equipment - of this bench: what it does not have needs no caution
 */
export function cautionsNow(
  actions: readonly CautionedAction[],
  board: Board,
  timeline: Timeline,
  equipment: readonly string[] = [],
): readonly string[] {
  const around: Around = { board, live: timeline.now.powered, equipment };
  const said = alreadySaid(around, timeline);
  const names = actions.flatMap((action) =>
    cautionNames(action, around).filter(
      (name) => changesPower(action) || saidAgain(name, action) || !said.has(name),
    ),
  );
  return [...new Set(names)].map((name) => CAUTIONS[name].words);
}

/** Power on or off is a step that nobody takes half warned. */
function changesPower(action: CautionedAction): boolean {
  return action.do === "power" || action.do === "unpower";
}
