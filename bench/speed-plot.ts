/** Cost against parts as a drawing: both axes logarithmic, one line a measurement, the bars as crosses. */

export interface Line {
  readonly name: string;
  readonly colour: string;
  /** [parts, milliseconds] */
  readonly points: readonly (readonly [number, number])[];
}

export interface Bar {
  readonly name: string;
  readonly parts: number;
  readonly ms: number;
}

const WIDTH = 860;
const HEIGHT = 520;
const LEFT = 70;
const RIGHT = 250;
const TOP = 30;
const BOTTOM = 50;
const PARTS = [40, 1500] as const;
const MS = [0.001, 20_000] as const;

function along(value: number, [low, high]: readonly [number, number]): number {
  return Math.log(value / low) / Math.log(high / low);
}

const x = (parts: number): number => LEFT + along(parts, PARTS) * (WIDTH - LEFT - RIGHT);
const y = (ms: number): number => HEIGHT - BOTTOM - along(ms, MS) * (HEIGHT - TOP - BOTTOM);

/** An SVG of the lines and bars. */
export function speedPlot(lines: readonly Line[], bars: readonly Bar[]): string {
  const out = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" font-family="sans-serif" font-size="12">`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="white"/>`,
  ];
  for (const parts of [50, 100, 300, 600, 1200])
    out.push(
      `<line x1="${x(parts)}" y1="${TOP}" x2="${x(parts)}" y2="${HEIGHT - BOTTOM}" stroke="#ddd"/>`,
      `<text x="${x(parts)}" y="${HEIGHT - BOTTOM + 18}" text-anchor="middle">${parts}</text>`,
    );
  for (const ms of [0.001, 0.01, 0.1, 1, 10, 100, 1000, 10_000])
    out.push(
      `<line x1="${LEFT}" y1="${y(ms)}" x2="${WIDTH - RIGHT}" y2="${y(ms)}" stroke="#ddd"/>`,
      `<text x="${LEFT - 8}" y="${y(ms) + 4}" text-anchor="end">${ms} ms</text>`,
    );
  out.push(`<text x="${(LEFT + WIDTH - RIGHT) / 2}" y="${HEIGHT - 12}" text-anchor="middle">parts</text>`);
  lines.forEach(({ name, colour, points }, i) => {
    const path = points.map(([parts, ms]) => `${x(parts).toFixed(1)},${y(ms).toFixed(1)}`).join(" ");
    out.push(`<polyline points="${path}" fill="none" stroke="${colour}" stroke-width="2"/>`);
    for (const [parts, ms] of points)
      out.push(`<circle cx="${x(parts).toFixed(1)}" cy="${y(ms).toFixed(1)}" r="3" fill="${colour}"/>`);
    const at = TOP + 20 * i;
    out.push(
      `<rect x="${WIDTH - RIGHT + 15}" y="${at}" width="12" height="12" fill="${colour}"/>`,
      `<text x="${WIDTH - RIGHT + 34}" y="${at + 11}">${name}</text>`,
    );
  });
  for (const { name, parts, ms } of bars)
    out.push(
      `<text x="${x(parts).toFixed(1)}" y="${(y(ms) + 5).toFixed(1)}" text-anchor="middle" font-size="16">&#215;<title>${name}: ${ms} ms</title></text>`,
    );
  out.push(
    `<text x="${WIDTH - RIGHT + 15}" y="${TOP + 20 * lines.length + 12}">&#215; what is asked for</text>`,
    "</svg>\n",
  );
  return out.join("\n");
}
