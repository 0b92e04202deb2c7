/**
 * From the mains terminals to the bridge. Values: fuse, varistor, X and Y capacitors, choke, PTC and relay, NTC of 5
 * ohm, charge resistor of 47 ohm 10 W (common practice); line inductors, varistors and X capacitors between three lines
 * from memory.
 */
import type { Composer } from "../composer.ts";

export interface MainsNets {
  readonly line: string;
  readonly neutral: string;
  readonly earth: string;
}

/** Of a fuse whose print nobody has read there are no amps to state. */
const rated = (amps: number | undefined) => (amps === undefined ? {} : { amps });

/** Fuse, varistor, X capacitors with their bleeder, common-mode choke, Y capacitors. */
export function mainsFilter(board: Composer, { line, neutral, earth }: MainsNets, amps?: number): void {
  board.stage("input");
  board.part("F", "fuse", { "1": line, "2": "L_F" }, { ...rated(amps), volts: 250 }, { price: 0.8 });
  board.part("RV", "varistor", { "1": "L_F", "2": neutral }, { volts: 470, joules: 125 }, { price: 0.6 });
  board.part("RV", "varistor", { "1": neutral, "2": "GDT" }, { volts: 680, joules: 80 }, { price: 0.6 });
  board.part("RV", "varistor", { "1": "GDT", "2": earth }, { volts: 680, joules: 80 }, { price: 0.6 });
  board.capacitor("L_F", neutral, 1e-6, 310, "film", { price: 0.7 });
  board.resistor("L_F", "XB", 470_000);
  board.resistor("XB", neutral, 470_000);
  board.part(
    "LF",
    "choke",
    { "1": "L_F", "2": "L_C", "3": neutral, "4": "N_C" },
    { henries: 4e-3, ohms: 0.03 },
    { price: 2.2 },
  );
  board.capacitor("L_C", "N_C", 0.47e-6, 310, "film", { price: 0.5 });
  board.capacitor("L_C", earth, 3.3e-9, 400, "ceramic");
  board.capacitor("N_C", earth, 3.3e-9, 400, "ceramic");
  board.net(line, "mains L at the terminal");
  board.net(neutral, "mains N at the terminal");
  board.net(earth, "protective earth");
  board.net("L_F", "line behind the fuse");
}

/** Fuse and one varistor, one X capacitor: small boards without a choke of their own (common practice). */
export function plainFilter(board: Composer, { line, neutral }: MainsNets, amps?: number): void {
  fuseAlone(board, { line, neutral }, amps);
  board.part("RV", "varistor", { "1": "L_F", "2": neutral }, { volts: 470, joules: 125 });
  board.capacitor("L_F", neutral, 0.47e-6, 310, "film");
  board.resistor("L_F", neutral, 1e6);
}

/** The line fuse and nothing else. */
export function fuseAlone(
  board: Composer,
  { line, neutral }: Pick<MainsNets, "line" | "neutral">,
  amps?: number,
): void {
  board.stage("input");
  board.part("F", "fuse", { "1": line, "2": "L_F" }, { ...rated(amps), volts: 250 });
  board.net(line, "mains L at the terminal");
  board.net(neutral, "mains N at the terminal");
  board.net("L_F", "line behind the fuse");
}

/** PTC with the relay contact across it; the coil hangs on 12 or 15 V and is pulled down by a driver. `from` is the line before it. */
export function inrush(
  board: Composer,
  coilRail: string,
  coilLow: string,
  coilVolts: number,
  from = "L_C",
): void {
  board.stage("inrush");
  board.part("RT", "ptc", { "1": from, "2": "L_B" }, { ohms: 47 }, { price: 0.9 });
  board.part(
    "K",
    "relay",
    { coil1: coilRail, coil2: coilLow, com: from, no: "L_B" },
    { coilOhms: coilVolts === 12 ? 360 : 560, coilVolts, amps: 20 },
    { price: 2.4 },
  );
  board.diode(coilLow, coilRail, "signal", 100, 0.2);
  board.net("L_B", "line behind the inrush PTC");
}

/** NTC alone in the line, as in small drives and washing machines: no relay, it stays in the path and runs warm. */
export function ntcInrush(board: Composer, from = "L_C"): void {
  board.stage("inrush");
  board.part("RT", "ntc", { "1": from, "2": "L_B" }, { ohms: 5 }, { price: 0.7 });
  board.net("L_B", "line behind the inrush NTC");
}

/**
 * Charge resistor between bridge and bus with the relay contact across it, as drives have it for one and three phases alike; the
 * coil is pulled down by a driver. A film capacitor of `filmVolts` stands before it.
 */
export function chargeCircuit(
  board: Composer,
  coilRail: string,
  coilLow: string,
  filmVolts: number,
  coilVolts: 12 | 15 = 15,
): void {
  board.stage("rectifier");
  board.capacitor("BR_P", "NBUS", 0.1e-6, filmVolts, "film", { price: 0.5 });
  board.stage("inrush");
  board.resistor("BR_P", "PBUS", 47, { watts: 10 }, { price: 0.9, role: "charge resistor" });
  board.part(
    "K",
    "relay",
    { coil1: coilRail, coil2: coilLow, com: "BR_P", no: "PBUS" },
    { coilOhms: coilVolts === 12 ? 360 : 560, coilVolts, amps: 20 },
    { price: 2.4 },
  );
  board.diode(coilLow, coilRail, "signal", 100, 0.2);
  board.net("BR_P", "bridge + before the charge resistor");
}

/** Lines of a three-phase board at its terminal and at its bridge. */
export const THREE_LINES = ["1", "2", "3"].map((n) => ({
  terminal: `L${n}_IN`,
  fused: `L${n}_F`,
  bridge: `L${n}_C`,
}));

/** For three lines of 400 V: a fuse and a filter coil each, varistors and X capacitors between them, one star to earth. */
export function threePhaseFilter(board: Composer, earth: string, amps?: number): void {
  board.stage("input");
  THREE_LINES.forEach(({ terminal, fused, bridge }, i) => {
    const next = THREE_LINES[(i + 1) % THREE_LINES.length];
    board.part("F", "fuse", { "1": terminal, "2": fused }, { ...rated(amps), volts: 500 }, { price: 1.1 });
    board.part(
      "RV",
      "varistor",
      { "1": fused, "2": next.fused },
      { volts: 820, joules: 125 },
      { price: 0.7 },
    );
    board.part(
      "LF",
      "inductor",
      { "1": fused, "2": bridge },
      { henries: 0.5e-3, ohms: 0.05 },
      { price: 1.6 },
    );
    board.capacitor(bridge, next.bridge, 0.22e-6, 480, "film", { price: 0.7 });
    board.capacitor(bridge, earth, 2.2e-9, 500, "ceramic");
    board.net(terminal, `mains L${i + 1} at the terminal`);
    board.net(fused, `line ${i + 1} behind its fuse`);
    board.net(bridge, `line ${i + 1} at the bridge`);
  });
  board.part("RV", "varistor", { "1": "L1_F", "2": earth }, { volts: 1100, joules: 80 }, { price: 0.7 });
  board.resistor("L1_C", "XB", 470_000);
  board.resistor("XB", "L2_C", 470_000);
  board.net(earth, "protective earth");
}

/** Bridge of `volts` behind two or three lines. */
export function rectifier(
  board: Composer,
  plus: string,
  minus: string,
  amps: number,
  lines: readonly string[] = ["L_B", "N_C"],
  volts = 800,
): void {
  board.stage("rectifier");
  const pins = Object.fromEntries(lines.map((line, i) => [`ac${i + 1}`, line]));
  board.part(
    "BR",
    "bridge",
    { ...pins, plus, minus },
    { amps, volts },
    { price: lines.length > 2 ? 4.6 : 2.2 },
  );
}
