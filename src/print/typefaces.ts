/** The typefaces of a PDF, one a script, embedded: the faces that every reader has know no ohm sign and no letters of half of the world. */
import { createRequire } from "node:module";
import type { Script } from "./visual-runs.ts";

const FILES: Readonly<Record<Script, { readonly plain: string; readonly bold: string }>> = {
  latin: {
    plain: "dejavu-fonts-ttf/ttf/DejaVuSans.ttf",
    bold: "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf",
  },
  devanagari: {
    plain: "@expo-google-fonts/noto-sans-devanagari/400Regular/NotoSansDevanagari_400Regular.ttf",
    bold: "@expo-google-fonts/noto-sans-devanagari/700Bold/NotoSansDevanagari_700Bold.ttf",
  },
  arabic: {
    plain: "@expo-google-fonts/noto-sans-arabic/400Regular/NotoSansArabic_400Regular.ttf",
    bold: "@expo-google-fonts/noto-sans-arabic/700Bold/NotoSansArabic_700Bold.ttf",
  },
};

export type Pdf = PDFKit.PDFDocument;

/** What is used of a typeface inside the PDF library, whose types keep it to themselves. Widths and shifts in thousandths of the size. */
interface Embedded {
  readonly id: string;
  readonly scale: number;
  readonly subset: { readonly glyphs: number[] };
  readonly widths: number[];
  readonly unicode: (readonly number[])[];
  readonly font: {
    _glyphs: Record<number, unknown>;
    getGlyph(id: number, codePoints?: readonly number[]): unknown;
  };
  layout(
    text: string,
    features: readonly string[],
  ): {
    readonly glyphs: readonly {
      readonly id: number;
      readonly advanceWidth: number;
      readonly codePoints: readonly number[];
    }[];
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
  };
  ref(): unknown;
}

/** A letter's shape on its line, in thousandths of the size: where it stands from the run's left edge, and its code in the file. */
export interface Shape {
  readonly code: string;
  readonly left: number;
  readonly rise: number;
}

export interface ShapedRun {
  readonly shapes: readonly Shape[];
  readonly width: number;
}

/** With a feature named the library shapes a text in one piece; without one it cuts it at spaces, whichever way the words run. */
const IN_ONE_PIECE = ["kern"];

/**
 * One typeface of one PDF. Arabic faces compose letters: one shape without dots serves several, and the libraries remember for each shape the
 * first letter that it stood for. Here each pair of shape and letters has its own code in the file, so that what is copied out is
 * what was written.
 */
export class Typeface {
  readonly #pdf: Pdf;
  readonly #face: Embedded;
  readonly #codes = new Map<string, string>();
  readonly #shaped = new Map<string, ShapedRun>();

  constructor(pdf: Pdf, script: Script, bold: boolean) {
    this.#pdf = pdf;
    pdf.font(createRequire(import.meta.url).resolve(FILES[script][bold ? "bold" : "plain"]));
    // Which typeface was set last is a field of the library that its types leave out.
    this.#face = (pdf as unknown as { readonly _font: Embedded })._font;
    const { font } = this.#face;
    const kept = font.getGlyph.bind(font);
    font.getGlyph = (id, codePoints) => {
      delete font._glyphs[id];
      return kept(id, codePoints);
    };
  }

  /** The name by which the present page knows the typeface. */
  nameOnPage(): string {
    // As above: pages list their typefaces.
    const { fonts } = this.#pdf.page as unknown as { readonly fonts: Record<string, unknown> };
    fonts[this.#face.id] ??= this.#face.ref();
    return this.#face.id;
  }

  shape(text: string): ShapedRun {
    const known = this.#shaped.get(text);
    if (known !== undefined) return known;
    const { glyphs, positions } = this.#face.layout(text, IN_ONE_PIECE);
    let x = 0;
    const shapes = glyphs.map((glyph, at) => {
      const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[at] ?? {};
      const shape = { code: this.#codeOf(glyph), left: x + xOffset, rise: yOffset };
      x += xAdvance;
      return shape;
    });
    const run = { shapes, width: x };
    this.#shaped.set(text, run);
    return run;
  }

  #codeOf({ id, advanceWidth, codePoints }: ReturnType<Embedded["layout"]>["glyphs"][number]): string {
    const key = `${id}:${codePoints.join(" ")}`;
    const known = this.#codes.get(key);
    if (known !== undefined) return known;
    const { subset, widths, unicode, scale } = this.#face;
    const number = subset.glyphs.push(id) - 1;
    widths[number] = advanceWidth * scale;
    unicode[number] = codePoints;
    const code = number.toString(16).padStart(4, "0");
    this.#codes.set(key, code);
    return code;
  }
}
