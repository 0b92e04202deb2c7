/** What happens when a powered board is told to run: it trips, stays weak, or works; and where its bus then stands. */
import { seesBus } from "./bus-sense.ts";
import type { Found } from "./found.ts";
import type { BoardLoad, Running } from "./run-state.ts";

export const RUN_MODEL = {
  /** a light load on the bench, watts (from memory) */
  watts: 250,
  /** what a boost holds a bus of 230 V mains at (common practice: 350 to 390), as a share of the mains' peak */
  boostShare: 1.18,
  /** a leak across a switch under this trips its partner's first pulse, ohms (from memory) */
  tripOhms: 200,
  /** under this share of the mains' peak the drive runs weak or says so (common practice) */
  weakShare: 0.88,
} as const;

/** The board's own motor, run lightly. */
export const OWN_LOAD: BoardLoad = { watts: RUN_MODEL.watts, dummy: false };

/** Stage words of what stands between controller and switches. */
const DRIVE_STAGES: ReadonlySet<string> = new Set(["inverter", "drive"]);

/** Does the boost have all that it needs: its parts, its drive, its relay, and mains behind it? */
function boostState({ view, board, feed, relaysIn }: Found): Running["boost"] {
  const [boost] = view.roles.boosts;
  if (boost === undefined) return "none";
  if (feed.kind !== "mains" || [...view.bypasses.keys()].some((ref) => !relaysIn.has(ref))) return "idle";
  const own = new Set([boost.switch, boost.diode, boost.reactor]);
  const broken = board.faults.some((fault) => {
    if (fault.of === "nets") return false;
    const part = view.board.parts.get(fault.part);
    if (part === undefined || fault.mode === "drift") return false;
    if (!own.has(part.ref) && part.stage !== "pfc") return false;
    const spare = part.kind === "capacitor" || part.role === "bypass diode";
    return !(spare && fault.mode === "open");
  });
  const there = [...own].every((ref) => board.part(ref) !== null);
  return broken || !there ? "idle" : "holds";
}

/** A shorted or leaking motor switch, a shorted motor, or a driver or shunt that no longer does its work. */
function trips({ view, board }: Found): boolean {
  const tank = view.roles.resonants.some(({ switch: one }) => {
    const junction = view.board.parts.get(one.part)?.kind === "igbt" ? "ce" : "ds";
    return board.acrossOhms(one.part, junction) < RUN_MODEL.tripOhms;
  });
  if (tank) return true;
  const leg = view.roles.motorSwitches.some((one) => {
    const kind = view.board.parts.get(one.part)?.kind;
    const junction = kind === "module" ? one.site.slice(one.part.length + 1) : kind === "igbt" ? "ce" : "ds";
    return board.acrossOhms(one.part, junction) < RUN_MODEL.tripOhms;
  });
  if (leg || view.roles.shunts.some((ref) => board.isOpen(ref))) return true;
  return board.parts().some((part) => part.kind === "motor" && board.isShort(part.ref));
}

/** Motor switches, drivers and gate parts that are open: a phase is missing. */
function phaseMissing({ view, board }: Found): boolean {
  return board.faults.some(
    (fault) =>
      fault.of === "part" &&
      fault.mode !== "drift" &&
      DRIVE_STAGES.has(view.board.parts.get(fault.part)?.stage ?? "") &&
      view.board.parts.get(fault.part)?.kind !== "capacitor",
  );
}

/** Is there something to drive: a motor (or a dummy in its place), or the coil of a hob? */
function drives({ view, board }: Found, { dummy }: BoardLoad): boolean {
  if (view.roles.resonants.length > 0)
    return view.roles.resonants.every(({ coil, capacitors }) =>
      [coil, ...capacitors].every((ref) => board.part(ref) !== null && !board.isOpen(ref)),
    );
  return view.roles.motorSwitches.length > 0 && (dummy || board.parts().some(({ kind }) => kind === "motor"));
}

/**
 * What it does when told to run. `loadedBus` is the bus with the run's watts drawn from it, in volts; null where there is none.
 */
export function running(
  found: Found,
  loadedBus: number | null,
  peakVolts: number,
  load: BoardLoad = OWN_LOAD,
): Running {
  const { view, alive } = found;
  const boost = boostState(found);
  const idle = { busVolts: loadedBus, boost: boost === "none" ? boost : ("idle" as const) };
  if (view.roles.controllers.every((one) => !alive.has(one.part))) return { does: "nothing", ...idle };
  if (trips(found)) return { does: "trips", ...idle };
  if (view.senses.some((sense) => !seesBus(found.board, sense))) return { does: "nothing", ...idle };
  if (!drives(found, load)) return { does: "nothing", ...idle };
  // The bus of a hob is not smoothed: under load it follows the mains.
  const smoothed = view.roles.resonants.length === 0;
  const low = smoothed && (loadedBus ?? 0) < RUN_MODEL.weakShare * peakVolts;
  if (boost === "idle" || low || phaseMissing(found)) return { does: "weak", ...idle };
  const busVolts = boost === "holds" ? RUN_MODEL.boostShare * peakVolts : loadedBus;
  return { does: "runs", busVolts, boost };
}
