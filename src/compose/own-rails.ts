/** The small supply and what makes each rail. */
import type { Composer } from "./composer.ts";
import type { OwnBoard, OwnRail } from "./own-board.ts";
import { offlineSupply, regulator, type Secondary } from "./stages/offline-supply.ts";

/** Above this a rail's winding has a fast diode; a schottky below. Common practice. */
const SCHOTTKY_VOLTS = 12;
/** The capacitor where a rail comes in on a plug. Common practice. */
const PLUG_FARADS = 100e-6;
const LOW_VOLTS = 6;

/** Adds what makes the rails; returns the reference of each rail's source. */
export function addRails(board: Composer, own: OwnBoard): ReadonlyMap<string, string> {
  const feeds = new Map<string, string>();
  if (own.answer("offline") === "plug") {
    board.doubting(own.doubtOf("offline"), () => {
      for (const rail of own.rails) feeds.set(rail.name, plugged(board, rail));
    });
    return feeds;
  }
  const wound = own.rails.filter(({ volts }) => volts > LOW_VOLTS || own.answer("lowRails") === "windings");
  board.doubting(own.doubtOf("offline"), () => {
    const diodes = offlineSupply(board, wound.map(secondary), {
      from: own.highBus ? "565 V" : "325 V",
      feedback: own.answer("offline") === "flyback" ? "optocoupler" : "own winding",
    });
    for (const [rail, diode] of diodes) feeds.set(rail, diode);
  });
  board.doubting(own.doubtOf("lowRails"), () => {
    for (const rail of own.rails)
      if (!wound.includes(rail))
        feeds.set(rail.name, regulator(board, sourceOf(own, rail).name, rail.name, rail.volts));
  });
  return feeds;
}

function secondary({ name, volts }: OwnRail): Secondary {
  return {
    rail: name,
    volts,
    diode: volts > SCHOTTKY_VOLTS ? "fast" : "schottky",
    farads: 470e-6,
  };
}

/** A linear regulator hangs on the next higher rail: the least heat. Common practice. */
function sourceOf(own: OwnBoard, rail: OwnRail): OwnRail {
  return own.rails
    .filter(({ volts }) => volts > rail.volts)
    .reduce((next, other) => (other.volts < next.volts ? other : next));
}

function plugged(board: Composer, { name, volts }: OwnRail): string {
  board.stage("supply");
  const source = board.link(`${name}_IN`, name, { plugged: true, role: `${volts} V from the other board` });
  board.capacitor(name, "NBUS", PLUG_FARADS, Math.max(16, Math.ceil(volts * 1.6)), "electrolytic");
  board.ceramic(name, "NBUS");
  board.net(`${name}_IN`, `${volts} V on its plug`);
  return source;
}
