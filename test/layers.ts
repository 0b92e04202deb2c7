/**
 * The layer table: a layer may import itself and the layers named behind it, nothing else.
 * ARCHITECTURE.md shows the same table and `test/walls.test.ts` holds the two together.
 */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  numeric: [],
  circuit: ["units", "numeric"],
  board: ["units"],
  bench: ["units", "board"],
  cold: ["units", "circuit", "board", "bench"],
  meter: ["units", "numeric", "circuit", "board", "bench", "cold"],
  live: ["units", "numeric", "board", "bench", "cold"],
  priors: ["units", "board", "bench", "live"],
  diagnosis: ["units", "numeric", "board", "bench", "meter", "live", "priors"],
  money: ["units", "board", "bench"],
  parts: ["units", "board", "bench"],
  safety: ["units", "board", "bench", "priors", "diagnosis"],
  planning: ["units", "numeric", "board", "bench", "meter", "live", "priors", "diagnosis", "money", "safety"],
  job: ["units", "board", "bench", "meter", "live", "priors", "diagnosis", "money", "safety", "planning"],
  shipped: ["units", "board"],
  practice: ["units", "numeric", "board", "bench", "meter", "live", "priors", "job"],
  wire: ["units", "board", "bench", "parts", "job"],
  store: ["units", "board", "bench", "job", "wire"],
  server: ["units", "wire", "job", "shipped", "store"],
  cli: [
    "units",
    "numeric",
    "circuit",
    "board",
    "bench",
    "cold",
    "meter",
    "live",
    "priors",
    "diagnosis",
    "money",
    "parts",
    "safety",
    "planning",
    "job",
    "shipped",
    "practice",
    "wire",
    "store",
    "server",
  ],
  web: ["units", "wire"],
};

/** Layers that touch no file, socket, clock, environment, package or unpassed randomness. */
export const PURE_LAYERS = [
  "units",
  "numeric",
  "circuit",
  "board",
  "bench",
  "cold",
  "meter",
  "live",
  "priors",
  "diagnosis",
  "money",
  "parts",
  "safety",
  "planning",
  "job",
  "shipped",
  "practice",
  "wire",
] as const;

/** The one file of `web/` that reaches the engine. */
export const ENGINE_DOOR = "src/web/engine-worker.ts";
