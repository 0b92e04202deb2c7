import { provenEmpty, ruleMeter, scene, smallDriveBoard } from "./scene.fixture.ts";

const board = smallDriveBoard();
const log: any[] = [
  ...provenEmpty(board),
  { do: "measure", mode: "diode", red: "PBUS", black: "U", reading: 0.0003 },
  { do: "measure", mode: "diode", red: "GH_U", black: "U", reading: "OL" },
];
const s = scene(board, log);
const b = s.belief;
b.priors.forEach((p, i) => {
  if (p.part.includes("~") && p.part.includes("GH_U"))
    console.log(
      p.reportAs,
      JSON.stringify(p.fault),
      p.rate,
      b.explanations.slice(0, 2).map((e) => e.silent[i]),
      s.predictor.audible(
        { mode: "diode", red: "GH_U", black: "U" },
        [b.priors.find((q) => q.reportAs === "Q1.ce:short")!.fault],
        [p.fault],
      ),
    );
});
console.log(
  b.explanations
    .slice(0, 6)
    .map((e) => [e.faults.map((f) => b.priors[f.fault].reportAs + "@" + f.since).join("+"), e.probability]),
);
console.log(
  b.explanations
    .slice(0, 2)
    .map((e) => e.faults.map((f) => b.priors[f.fault].reportAs).join("+") + " " + e.probability.toFixed(2)),
);
console.log(b.priors.length, s.priors.knockOns.length);

import { AudibleMemory, coldEvidence, coldGroups } from "../diagnosis/cold-evidence.ts";

const q1 = b.priors.findIndex((p) => p.reportAs === "Q1.ce:short");
const d = b.priors.findIndex((p) => p.reportAs === "GH_U~PBUS:leaky");
for (const g of coldGroups(s.input.timeline)) {
  const e = coldEvidence(g, s.predictor, b.priors, new AudibleMemory(), new Set());
  console.log(
    g.key,
    e.audible([q1])[d],
    e.audible([])[d],
    e.logLikelihood([q1])[2],
    e.logLikelihood([q1, d])[2],
  );
}
