/** The demo's drive after its repair: a job with something of everything that papers tell. */
import { SHIPPED } from "../shipped/shipped.ts";

const found = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive");
if (found === undefined) throw new Error("the demo's board is not shipped");

const diode = (red: string, black: string, reading: number | "OL") => ({
  do: "measure",
  mode: "diode",
  red,
  black,
  reading,
});
const volts = (part: string, reading: number) => ({
  do: "measure",
  mode: "dcv",
  red: `${part}.plus`,
  black: `${part}.minus`,
  reading,
});

export const CLOSED_LOG: readonly object[] = [
  ...["C5", "C6", "C15", "C1", "C7", "C2"].map((part) => volts(part, 0.3)),
  { do: "look", part: "RV1", finding: "burnt" },
  { do: "measure", mode: "continuity", red: "L_IN", black: "L_F", reading: "silent" },
  diode("NBUS", "PBUS", 0.455),
  diode("L_B", "PBUS", 0.0002),
  diode("N_C", "PBUS", 0.467),
  diode("U", "PBUS", 0.428),
  diode("NBUS", "V", "OL"),
  { do: "note", text: "Motor plug: red U, white V, black W; 4.7 kΩ across J1" },
  { do: "quote", offer: "repair", price: 1140.5, cap: 1180, answer: "accepted" },
  { do: "replace", part: "BR1", price: 2.5, with: "GBJ2510" },
  { do: "replace", part: "F1", price: 0.4 },
  { do: "replace", part: "Q4", price: 3.9, used: true },
  { do: "clean", stage: "inverter" },
  diode("L_B", "PBUS", 0.46),
  diode("NBUS", "V", 0.43),
  { do: "measure", mode: "continuity", red: "L_IN", black: "L_F", reading: "beep" },
  ...["C5", "C6", "C15", "C1", "C7", "C2"].map((part) => volts(part, 0.1)),
  { do: "overrule", of: "motor", why: "the motor is at the customer's" },
  { do: "power", feed: "lamp", watts: 100, observed: "lamp-dim" },
  { do: "unpower" },
  { do: "power", feed: "mains", observed: "runs" },
  { do: "unpower" },
  { do: "close", verdict: "repaired" },
];

/** A job file's content, log included. */
export const CLOSED_JOB = {
  format: "faultwright-job/1",
  board: found.board,
  cause: "surge",
  symptom: "dead",
  absent: ["M1"],
  equipment: ["lamp-100"],
  terms: { ratePerHour: 48, taxRate: 0.2, partsMarkUp: 0.25, newBoardPrice: 260, feeIfNotRepaired: 25 },
  log: CLOSED_LOG,
};
