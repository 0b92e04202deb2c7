/** The story of a case as one page for the printer: what was found, and where on the board, and the ways to it side by side. No script, nothing loaded. */

import type { Board } from "../board/board.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { parseFault } from "../board/parse-fault.ts";
import { plain } from "../messages/said.ts";
import { type CasePicture, caseFigures } from "./case-figure.ts";
import { costWords, type NamedWay } from "./side-by-side.ts";

const STYLE = `
body { font: 11pt/1.4 sans-serif; color: #111; margin: 2rem auto; max-width: 60rem; padding: 0 1rem; }
h1 { font-size: 1.5em; } h2 { font-size: 1.15em; margin-top: 1.5em; }
table { border-collapse: collapse; width: 100%; table-layout: fixed; }
th, td { border: 1px solid #555; padding: 0.3em 0.5em; vertical-align: top; text-align: left; overflow-wrap: anywhere; }
th:first-child, td:first-child { width: 2.5em; text-align: right; }
.cost { display: block; color: #333; font-size: 0.9em; } .why { display: block; font-style: italic; font-size: 0.9em; }
figure { margin: 0.5em 0 1em; break-inside: avoid; } figure svg { width: 100%; height: auto; }
figcaption { font-size: 0.9em; } .found { fill: none; stroke: #ff5a3c; stroke-width: 5; }
.at circle { fill: #ffd84a; stroke: #111; } .at text { fill: #111; stroke: #fff; stroke-width: 4; paint-order: stroke; font-weight: 700; font-family: sans-serif; }
thead { display: table-header-group; } tr { break-inside: avoid; }
@page { margin: 15mm; }
@media print { body { margin: 0; max-width: none; padding: 0; font-size: 9.5pt; } }
`;

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string) => plain(text).replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

function partsIn(faults: readonly string[], board: Board): readonly string[] {
  const parts = faults.flatMap((name) => {
    const fault = parseFault(name, board);
    return fault.ok && fault.value.of === "part" ? [fault.value.part] : [];
  });
  return [...new Set(parts)];
}

export interface CaseStory {
  readonly title: string;
  readonly board: Board;
  /** drawn from the board's file */
  readonly picture: CasePicture;
  /** faults as the file format spells them */
  readonly found: readonly string[];
  readonly ways: readonly NamedWay[];
  readonly currency: string;
}

export function casePage({ title, board, picture, found, ways, currency }: CaseStory): string {
  const rows = Array.from({ length: Math.max(0, ...ways.map(({ steps }) => steps.length)) }, (_, row) => {
    const cells = ways.map(({ steps }) => {
      const step = steps[row];
      if (step === undefined) return "<td></td>";
      const why = step.why === "" ? "" : `<span class="why">${escaped(step.why)}</span>`;
      return `<td>${escaped(step.words)}<span class="cost">${escaped(costWords(step, currency))}</span>${why}</td>`;
    });
    return `<tr><td>${row + 1}</td>${cells.join("")}</tr>`;
  });
  const sums = ways.map(
    ({ sum }) => `<td>${sum.steps} steps<span class="cost">${escaped(costWords(sum, currency))}</span></td>`,
  );
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(title)}</title><style>${STYLE}</style></head>
<body>
<h1>${escaped(title)}</h1>
<h2>What was found</h2>
<ul>${found.map((fault) => `<li>${escaped(faultNameWords(fault, board))}</li>`).join("")}</ul>
<h2>Where on the board</h2>
${caseFigures(picture, board, partsIn(found, board), ways).join("\n")}
<p>Drawn from the board's file, stage beside stage: on a board of another make the parts lie elsewhere.</p>
<h2>The ways to it</h2>
<table>
<thead><tr><th>Step</th>${ways.map(({ name }) => `<th>${escaped(name)}</th>`).join("")}</tr></thead>
<tbody>
${rows.join("\n")}
<tr><td>Sum</td>${sums.join("")}</tr>
</tbody>
</table>
<p>Mains and charged capacitors kill. A recorded way is no instruction: before a hand goes in, every store of charge is proven empty.</p>
</body>
</html>
`;
}
