/** What the small off-line supply does: whether it starts, what it regulates to, where it gives up. */
import type { FaultedBoard } from "./faulted-board.ts";
import { SUPPLY_FAILS_OHMS, SUPPLY_MODEL } from "./live-models.ts";
import type { SupplyLoop, SupplyPlan } from "./supply-plan.ts";

/** How it stands before its load is looked at. `why` is a sentence's end: "the rails are dead: ...". */
export type SupplyStart =
  | { readonly does: "nothing"; readonly why: string }
  /** starts and stops again and again */
  | { readonly does: "hiccup"; readonly why: string }
  /** regulates the loop's rail to `volts`; null where the loop is open and nothing holds it */
  | { readonly does: "run"; readonly volts: number | null; readonly why: string };

function nothing(why: string): SupplyStart {
  return { does: "nothing", why };
}

/** Is a two-pin or one-junction part no longer in its place? */
export function isGone(board: FaultedBoard, ref: string, junction: string | null = null): boolean {
  const part = board.part(ref);
  if (part === null || board.isOpen(ref, junction)) return true;
  const { lifted } = board.bench;
  return lifted.size > 0 && [...part.pins.keys()].some((pin) => lifted.has(`${ref}.${pin}`));
}

/** Of resistors side by side: all gone, or their ohms. */
function sideBySide(board: FaultedBoard, refs: readonly string[]): number {
  const siemens = refs.reduce((sum, ref) => {
    const nominal = board.board.parts.get(ref)?.value.ohms ?? 10_000;
    return isGone(board, ref) ? sum : sum + 1 / board.throughOhms(ref, null, nominal);
  }, 0);
  return siemens > 0 ? 1 / siemens : Number.POSITIVE_INFINITY;
}

/** Ohms of the LED's path below which the supply is held back whatever its rail, and the LED's own volts. */
const LED_VOLTS = 1.1;
/** Amps through the LED that hold the supply back (common practice: about a milliamp). */
const LED_AMPS = 1e-3;

/** What the loop holds its rail at, volts; null: nothing holds it; 0: it holds everything back. */
function regulatedVolts(board: FaultedBoard, loop: SupplyLoop): number | null {
  const { opto, reference } = loop;
  if (board.isShort(opto, "out", SUPPLY_FAILS_OHMS.coupler)) return 0;
  if (isGone(board, opto, "led") || isGone(board, opto, "out") || board.isShort(opto, "led")) return null;
  // Without a resistor of its own the LED stands on the rail itself.
  const led = loop.ledResistors.length === 0 ? 0 : sideBySide(board, loop.ledResistors);
  if (!Number.isFinite(led)) return null;
  // With its cathode held down the LED lights as soon as the rail can push its milliamp through.
  if (board.isShort(reference, "ka", SUPPLY_FAILS_OHMS.coupler)) return LED_VOLTS + led * LED_AMPS;
  if (isGone(board, reference, "ka")) return null;
  const [top, bottom] = [sideBySide(board, loop.top), sideBySide(board, loop.bottom)];
  if (!Number.isFinite(top)) return null;
  const volts = board.board.parts.get(reference)?.value.volts ?? 2.5;
  const held = Number.isFinite(bottom) ? volts * (1 + top / bottom) : volts;
  return Math.max(held, LED_VOLTS + volts);
}

/** Does the switch's own control get its feed once it runs? */
function ownFeedGone(board: FaultedBoard, plan: SupplyPlan): string | null {
  const { own } = plan;
  if (own === null) return null;
  if (isGone(board, plan.transformer, own.winding)) return "the winding that feeds its own control is open";
  const open = own.series.find((ref) => isGone(board, ref));
  if (open !== undefined) return `${open} no longer feeds its control`;
  const capacitors = own.capacitors.filter((ref) => (board.board.parts.get(ref)?.value.farads ?? 0) > 1e-6);
  if (
    capacitors.length > 0 &&
    capacitors.every((ref) => isGone(board, ref) || board.fault(ref)?.mode === "drift")
  )
    return `${capacitors.join(" and ")} cannot hold its control's feed up until it runs`;
  return null;
}

/** What of its own feed and feedback keeps a chip from running; null: nothing. */
function chipStopped(board: FaultedBoard, plan: SupplyPlan): SupplyStart | null {
  const { switcher, transformer, own, loop } = plan;
  const down = [switcher, ...(own?.capacitors ?? [])].find((ref) =>
    board.isShort(ref, ref === switcher ? "vcc" : null, SUPPLY_FAILS_OHMS.feed),
  );
  if (down !== undefined) return nothing(`${down} holds its control's feed down`);
  const held = [switcher, ...(loop?.feedbackCapacitors ?? [])].find((ref) =>
    board.isShort(ref, ref === switcher ? "fb" : null, SUPPLY_FAILS_OHMS.feedback),
  );
  if (held !== undefined) return nothing(`${held} holds its feedback pin down`);
  const starved = ownFeedGone(board, plan);
  if (starved !== null) return { does: "hiccup", why: starved };
  if (own !== null && board.isShort(transformer, own.winding))
    return { does: "hiccup", why: "the winding that feeds its own control is shorted" };
  return null;
}

/** A transistor without a chip: held at its control, never started, or not kept swinging, it does nothing at all. */
function transistorStopped(
  board: FaultedBoard,
  { switcher, transformer, own, discrete }: SupplyPlan,
): SupplyStart | null {
  if (board.isShort(switcher, discrete?.drive ?? "", SUPPLY_FAILS_OHMS.feed))
    return nothing(`${switcher} holds its own control down`);
  const start = discrete?.start.find((ref) => isGone(board, ref));
  if (start !== undefined) return nothing(`${start} no longer starts it`);
  const swing = own?.series.find((ref) => isGone(board, ref));
  if (swing !== undefined) return nothing(`${swing} no longer keeps it swinging`);
  if (own !== null && (isGone(board, transformer, own.winding) || board.isShort(transformer, own.winding)))
    return nothing("the winding that keeps it swinging is gone");
  return null;
}

/**
 * How the supply starts with `inputVolts` at its input.
 * @param outputsGone - rails whose own path from the transformer is open
 */
export function supplyStart(
  board: FaultedBoard,
  plan: SupplyPlan,
  inputVolts: number,
  outputsGone: ReadonlySet<string>,
): SupplyStart {
  const { switcher, through, discrete, transformer, primary, loop, clamp } = plan;
  if (inputVolts < SUPPLY_MODEL.startVolts) return nothing("its input is below what it starts from");
  if (board.part(switcher) === null || board.part(transformer) === null)
    return nothing("parts of it are off");
  if (isGone(board, switcher, through) || isGone(board, switcher, discrete?.drive ?? "vcc"))
    return nothing(`${switcher} does not switch`);
  if (board.isShort(switcher, through, SUPPLY_FAILS_OHMS.drain))
    return nothing(`${switcher} is shorted through`);
  if (isGone(board, transformer, primary)) return nothing("the primary is open");
  if (board.isShort(transformer, primary)) return { does: "hiccup", why: "the primary is shorted" };
  // One shorted part of the clamp takes the whole stroke that was for the rails.
  const clamped = clamp.find((ref) => board.isShort(ref, null, SUPPLY_FAILS_OHMS.clamp));
  if (clamped !== undefined) return { does: "hiccup", why: `${clamped} clamps all of its stroke` };
  const stopped = discrete === null ? chipStopped(board, plan) : transistorStopped(board, plan);
  if (stopped !== null) return stopped;
  const winding = plan.outputs.find((output) => board.isShort(transformer, output.winding));
  if (winding !== undefined) return { does: "hiccup", why: `the winding of ${winding.rail} is shorted` };
  const rectifier = plan.outputs.flatMap((output) => output.diodes).find((ref) => board.isShort(ref));
  if (rectifier !== undefined) return { does: "hiccup", why: `${rectifier} is shorted` };
  const [first] = plan.outputs;
  const nominal = board.board.rails.find((rail) => rail.name === first?.rail)?.volts ?? 0;
  if (loop === null) return { does: "run", volts: nominal, why: "its loop is not known: taken for good" };
  if (outputsGone.has(loop.rail))
    return { does: "run", volts: null, why: `nothing reaches ${loop.rail}, which it regulates` };
  const volts = discrete === null && isGone(board, switcher, "fb") ? null : regulatedVolts(board, loop);
  if (volts === 0) return nothing(`${loop.opto} holds it back`);
  return { does: "run", volts, why: volts === null ? "its feedback is lost" : "it regulates" };
}
