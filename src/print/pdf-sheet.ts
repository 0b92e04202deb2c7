/** The sheets of a PDF that are being filled: a place down the sheet, and what can be put there. */
import type { Direction } from "../messages/language.ts";
import type { Cell } from "../papers/paper.ts";
import type { SHEETS } from "./paper-sizes.ts";
import { openPicture } from "./pdf-picture.ts";
import { squareCode } from "./square-code.ts";
import { type SetText, TextSetter, type TextStyle } from "./text-setter.ts";
import type { Pdf } from "./typefaces.ts";

type Sheet = (typeof SHEETS)[keyof typeof SHEETS];
/** Between the columns of a table. */
const GUTTER = 6;
const HAIR = 0.6;
const FRAME = 1.4;
const FOOT = 8;
/** A picture's height at most, as a share of the sheet's, by how many stand beside each other. */
const PICTURE_SHARE = { 1: 0.36, 2: 0.28 } as const;

interface CaptionedPicture {
  readonly caption: string;
  /** null: it is not there */
  readonly data: Uint8Array | null;
  readonly unreadable: string;
}

export class PdfSheet {
  /** points from the top of the sheet */
  y: number;
  /** points at the end of each line that are taken by something else */
  narrow = 0;
  readonly width: number;
  readonly #pdf: Pdf;
  readonly #sheet: Sheet;
  readonly #rtl: boolean;
  readonly #setter: TextSetter;

  constructor(pdf: Pdf, sheet: Sheet, direction: Direction) {
    this.#pdf = pdf;
    this.#sheet = sheet;
    this.#rtl = direction === "rtl";
    this.#setter = new TextSetter(pdf, direction);
    this.y = sheet.margin;
    this.width = sheet.width - 2 * sheet.margin;
  }

  #scaled({ bold, size }: TextStyle): TextStyle {
    return { bold, size: size * this.#sheet.scale };
  }

  space(points: number): void {
    this.y += points * this.#sheet.scale;
  }

  /** Goes on to the next sheet where fewer points than these are left; says whether it did. */
  keep(points: number): boolean {
    const { margin, height } = this.#sheet;
    if (this.y + points <= height - margin || this.y <= margin) return false;
    this.#pdf.addPage();
    this.y = margin;
    return true;
  }

  /** A span of the line from its start: points from the left of the sheet. */
  #left(fromStart: number, width: number): number {
    const { margin } = this.#sheet;
    return this.#rtl ? margin + this.width - fromStart - width : margin + fromStart;
  }

  text(text: string, style: TextStyle, fromStart = 0): void {
    const width = this.width - this.narrow - fromStart;
    const set = this.#setter.set(text, width, this.#scaled(style));
    this.#flow(set, fromStart, width);
  }

  /** Line by line, so that a long text goes on overleaf. */
  #flow({ lines, style, height }: SetText, fromStart: number, width: number): void {
    const leading = height / Math.max(1, lines.length);
    for (const line of lines) {
      this.keep(leading);
      this.#setter.draw(
        { lines: [line], style, height: leading },
        this.#left(fromStart, width),
        this.y,
        width,
      );
      this.y += leading;
    }
  }

  /** A line of a list behind its mark. */
  item(mark: string, text: string, style: TextStyle, indent: number): void {
    const scaled = this.#scaled(style);
    const room = indent * this.#sheet.scale;
    const set = this.#setter.set(mark, room, scaled);
    this.keep(set.height);
    this.#setter.draw(set, this.#left(0, room), this.y, room);
    this.text(text, style, room);
  }

  /** A text in a frame, which black and white keeps. */
  boxed(text: string, style: TextStyle, inset: number): void {
    const scaled = this.#scaled(style);
    const room = inset * this.#sheet.scale;
    const width = this.width - 2 * room;
    const set = this.#setter.set(text, width, scaled);
    this.keep(set.height + 2 * room);
    this.#pdf
      .rect(this.#sheet.margin, this.y, this.width, set.height + room)
      .lineWidth(FRAME)
      .stroke();
    this.#setter.draw(set, this.#left(room, width), this.y + room / 2, width);
    this.y += set.height + room + room / 2;
  }

  rule(): void {
    const { margin } = this.#sheet;
    this.#pdf
      .moveTo(margin, this.y)
      .lineTo(margin + this.width, this.y)
      .lineWidth(HAIR)
      .stroke();
    this.y += 2;
  }

  /**
   * One row of a table; what is too long for its column runs on below, and the row keeps together on one sheet.
   * @param kinds - what stands in the columns: money is set to the end
   * @param overleaf - drawn first where the row goes on to a new sheet; says whether it did
   */
  row(
    cells: readonly string[],
    shares: readonly number[],
    style: TextStyle,
    kinds: readonly Cell[],
    overleaf: () => void = () => undefined,
  ): boolean {
    const scaled = this.#scaled(style);
    let fromStart = 0;
    const set = cells.map((cell, column) => {
      const whole = (shares[column] ?? 0) * this.width;
      const at = fromStart;
      fromStart += whole;
      return { text: this.#setter.set(cell, whole - GUTTER, scaled), at, width: whole - GUTTER };
    });
    const height = Math.max(...set.map(({ text }) => text.height));
    const turned = this.keep(height);
    if (turned) overleaf();
    set.forEach(({ text, at, width }, column) => {
      const money = typeof kinds[column] === "object";
      this.#setter.draw(text, this.#left(at, width), this.y, width, money ? "end" : "start");
    });
    this.y += height;
    return turned;
  }

  /**
   * Pictures beside each other, what is written under each below it; where one cannot be read, that is said in its place.
   * @param across - as many as the width is shared by, whether or not the row is full
   */
  pictureRow(
    pictures: readonly CaptionedPicture[],
    across: 1 | 2,
    style: TextStyle,
  ): { readonly height: number; draw(): void } {
    const scaled = this.#scaled(style);
    const room = (this.width + GUTTER) / across;
    const width = room - GUTTER;
    const most = { width, height: this.#sheet.height * PICTURE_SHARE[across] };
    const set = pictures.map(({ caption, data, unreadable }) => {
      const opened = data === null ? null : openPicture(this.#pdf, data, most);
      const text = opened === null ? `${caption}\n${unreadable}` : caption;
      return { opened, under: this.#setter.set(text, width, scaled) };
    });
    const tallest = Math.max(...set.map(({ opened }) => opened?.height ?? 0));
    const height = tallest + GUTTER + Math.max(...set.map(({ under }) => under.height));
    const draw = () => {
      set.forEach(({ opened, under }, at) => {
        opened?.draw(this.#left(at * room, opened.width), this.y + tallest - opened.height);
        this.#setter.draw(under, this.#left(at * room, width), this.y + tallest + GUTTER, width);
      });
      this.y += height;
    };
    return { height, draw };
  }

  /** At the end of the line, its top where the sheet stands now. */
  squareCode(content: string, side: number): void {
    const rows = squareCode(content);
    const step = side / rows.length;
    const left = this.#left(this.width - side, side);
    rows.forEach((row, r) => {
      row.forEach((dark, c) => {
        if (dark) this.#pdf.rect(left + c * step, this.y + r * step, step, step);
      });
    });
    this.#pdf.fill("black");
  }

  /** `2 / 3` at the foot, where there is more than one sheet. */
  numberPages(locale: string): void {
    const { start, count } = this.#pdf.bufferedPageRange();
    if (count < 2) return;
    const number = new Intl.NumberFormat(locale);
    const { margin, height } = this.#sheet;
    for (let page = 0; page < count; page++) {
      this.#pdf.switchToPage(start + page);
      const set = this.#setter.set(
        `${number.format(page + 1)} / ${number.format(count)}`,
        this.width,
        this.#scaled({ bold: false, size: FOOT }),
      );
      this.#setter.draw(set, margin, height - margin + FOOT, this.width, "end");
    }
  }
}
