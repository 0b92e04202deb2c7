/** The stage words that the board file format knows; a board may use others. */
export const KNOWN_STAGES: readonly string[] = [
  "input",
  "inrush",
  "rectifier",
  "pfc",
  "bus",
  "inverter",
  "drive",
  "chopper",
  "supply",
  "standby",
  "logic",
  "output",
  "sensor",
];
