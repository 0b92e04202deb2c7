/** Sets text on a page of a PDF: broken into lines, each in its visual order, each script in its own typeface. */
import type { Direction } from "../messages/language.ts";
import { type Pdf, type ShapedRun, Typeface } from "./typefaces.ts";
import {
  orderOf,
  type Script,
  scriptOf,
  type VisualRun,
  visualRuns,
  withoutSteering,
} from "./visual-runs.ts";

export interface TextStyle {
  readonly bold: boolean;
  /** points */
  readonly size: number;
}

interface Line {
  readonly runs: readonly VisualRun[];
  /** points */
  readonly width: number;
  /** as it reads, marks of order left out */
  readonly text: string;
}

export interface SetText {
  readonly lines: readonly Line[];
  readonly style: TextStyle;
  /** points, all lines together */
  readonly height: number;
}

/** Distance from line to line, and from a line's top to its baseline, in sizes. Devanagari and Arabic reach further than Latin. */
const LEADING = 1.5;
const BASELINE = 1.1;

export type Edge = "start" | "end";

export class TextSetter {
  readonly #pdf: Pdf;
  readonly #direction: Direction;
  readonly #faces = new Map<string, Typeface>();

  constructor(pdf: Pdf, direction: Direction) {
    this.#pdf = pdf;
    this.#direction = direction;
  }

  /** @param width - points that a line may take */
  set(text: string, width: number, style: TextStyle): SetText {
    const lines = text.split("\n").flatMap((paragraph) => this.#linesOf(paragraph, width, style));
    return { lines, style, height: lines.length * style.size * LEADING };
  }

  /** Draws from the top left corner of the space that the text was set for. */
  draw({ lines, style }: SetText, left: number, top: number, width: number, edge: Edge = "start"): void {
    const toRight = (this.#direction === "rtl") === (edge === "start");
    lines.forEach((line, at) => {
      const x = toRight ? left + width - line.width : left;
      this.#drawLine(line, style, x, top + (at * LEADING + BASELINE) * style.size);
    });
  }

  #linesOf(paragraph: string, width: number, style: TextStyle): readonly Line[] {
    const order = orderOf(paragraph, this.#direction);
    return this.#breaks(paragraph, width, style).map(([start, end]) => {
      const runs = visualRuns(paragraph, order, start, end);
      const runsWidth = runs.reduce((sum, run) => sum + this.#widthOf(run, style), 0);
      return { runs, width: runsWidth, text: withoutSteering(paragraph.slice(start, end)) };
    });
  }

  /** Where lines begin and end: at spaces, and inside a word only where it is wider than the line. */
  #breaks(paragraph: string, width: number, style: TextStyle): readonly (readonly [number, number])[] {
    const lines: [number, number][] = [];
    let start = 0;
    let end = 0;
    for (const { index, 0: word } of paragraph.matchAll(/\S+/g)) {
      const stop = index + word.length;
      if (end > start && this.#wide(paragraph.slice(start, stop), style) > width) {
        lines.push([start, end]);
        start = index;
      }
      end = stop;
      while (this.#wide(paragraph.slice(start, end), style) > width && end - start > 1) {
        const cut = this.#fitting(paragraph.slice(start, end), width, style);
        lines.push([start, start + cut]);
        start += cut;
      }
    }
    return end > start || lines.length === 0 ? [...lines, [start, end]] : lines;
  }

  /** How many characters of a word fit, one at least. */
  #fitting(word: string, width: number, style: TextStyle): number {
    let cut = word.length - 1;
    while (cut > 1 && this.#wide(word.slice(0, cut), style) > width) cut -= 1;
    return cut;
  }

  /** Width of a text whatever the order of its runs. */
  #wide(text: string, style: TextStyle): number {
    const runs = withoutSteering(text).match(
      /[\u0900-\u097f\u200c\u200d]+|[\u0600-\u06ff]+|[^\u0600-\u06ff\u0900-\u097f\u200c\u200d]+/g,
    );
    return (runs ?? []).reduce(
      (sum, run) => sum + this.#widthOf({ script: scriptOf(run), text: run }, style),
      0,
    );
  }

  #widthOf(run: VisualRun, style: TextStyle): number {
    return (this.#face(run.script, style.bold).shape(run.text).width * style.size) / 1000;
  }

  #face(script: Script, bold: boolean): Typeface {
    const key = `${script} ${bold}`;
    const known = this.#faces.get(key);
    if (known !== undefined) return known;
    const face = new Typeface(this.#pdf, script, bold);
    this.#faces.set(key, face);
    return face;
  }

  /** The PDF's own operators (ISO 32000, text objects), since the library draws no line of several typefaces. */
  #drawLine({ runs, text }: Line, style: TextStyle, left: number, baseline: number): void {
    if (runs.length === 0) return;
    const pdf = this.#pdf;
    const { height } = pdf.page;
    // Vowel signs of Devanagari stand before the letter that they follow: what is copied out has to be told.
    const told = runs.some(({ script }) => script === "devanagari");
    pdf.save();
    pdf.transform(1, 0, 0, -1, 0, height);
    pdf.addContent("BT");
    if (told) pdf.addContent(`/Span <</ActualText <${utf16(text)}>>> BDC`);
    let x = left;
    for (const run of runs) {
      const face = this.#face(run.script, style.bold);
      const shaped = face.shape(run.text);
      pdf.addContent(`/${face.nameOnPage()} ${figure(style.size)} Tf`);
      pdf.addContent(`1 0 0 1 ${figure(x)} ${figure(height - baseline)} Tm`);
      pdf.addContent(shownRun(shaped, style.size));
      x += (shaped.width * style.size) / 1000;
    }
    if (told) pdf.addContent("EMC");
    pdf.addContent("ET");
    pdf.restore();
  }
}

function figure(points: number): string {
  return String(Math.round(points * 1000) / 1000);
}

function utf16(text: string): string {
  const units = Array.from({ length: text.length }, (_, at) => text.charCodeAt(at));
  return ["feff", ...units.map((unit) => unit.toString(16).padStart(4, "0"))].join("");
}

/** Each shape at its place, from the run's start: `Ts` lifts marks, `Td` moves along the line. */
function shownRun({ shapes }: ShapedRun, size: number): string {
  let at = 0;
  let rise = 0;
  return shapes
    .map(({ code, left, rise: lifted }) => {
      const move = left === at ? "" : `${figure(((left - at) * size) / 1000)} 0 Td `;
      const lift = lifted === rise ? "" : `${figure((lifted * size) / 1000)} Ts `;
      at = left;
      rise = lifted;
      return `${lift}${move}<${code}> Tj`;
    })
    .concat(rise === 0 ? [] : ["0 Ts"])
    .join("\n");
}
