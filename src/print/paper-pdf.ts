/** A paper as PDF: blocks laid out down the sheet, in the direction of its language. */
import { writingOf } from "../messages/language.ts";
import type { Block, Paper, PaperPictures, PaperTable } from "../papers/paper.ts";
import { type PaperSize, SHEETS } from "./paper-sizes.ts";
import { PdfSheet } from "./pdf-sheet.ts";

const TEXT = 10;
const HEADING = 12.5;
const TITLE = 20;
const GAP = 6;
const INDENT = 18;
const INSET = 9;
/** The square code: at most this wide, and at most this share of the sheet. */
const CODE_MOST = 120;
const CODE_SHARE = 0.34;

/**
 * The file's bytes. `made` is the time of making, which is written into it.
 * @param pictures - JPEG or PNG, those of the job in the order in which it keeps them
 */
export async function paperPdf(
  paper: Paper,
  size: PaperSize,
  made: Date,
  pictures: readonly Uint8Array[] = [],
): Promise<Uint8Array> {
  const { default: Document } = await import("pdfkit");
  const { width, height } = SHEETS[size];
  const pdf = new Document({
    size: [width, height],
    margin: 0,
    bufferPages: true,
    lang: paper.language,
    displayTitle: true,
    info: { Title: paper.title, Creator: "Faultwright", CreationDate: made },
  });
  const pieces: Uint8Array[] = [];
  const done = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on("data", (piece: Uint8Array) => pieces.push(piece));
    pdf.on("error", reject);
    pdf.on("end", () => resolve(Buffer.concat(pieces)));
  });
  const sheet = new PdfSheet(pdf, SHEETS[size], paper.direction);
  drawPaper(sheet, paper, pictures);
  sheet.numberPages(writingOf(paper.language).locale);
  pdf.end();
  return done;
}

function drawPaper(sheet: PdfSheet, { title, facts, blocks }: Paper, pictures: readonly Uint8Array[]): void {
  const code = blocks.find((block) => block.block === "code");
  const side = code === undefined ? 0 : Math.min(CODE_MOST, sheet.width * CODE_SHARE);
  const top = sheet.y;
  if (code !== undefined) {
    sheet.squareCode(code.content, side);
    sheet.narrow = side + 2 * INSET;
  }
  sheet.text(title, { bold: true, size: TITLE });
  sheet.space(GAP);
  for (const { line } of facts) sheet.text(line, { bold: false, size: TEXT });
  if (code !== undefined) sheet.text(code.text, { bold: true, size: TEXT });
  sheet.narrow = 0;
  sheet.y = Math.max(sheet.y, top + side);
  for (const block of blocks)
    if (block.block === "pictures") drawPictures(sheet, block, pictures);
    else drawBlock(sheet, block);
}

function drawPictures(
  sheet: PdfSheet,
  { text, captions, across, unreadable }: PaperPictures,
  pictures: readonly Uint8Array[],
): void {
  const style = { bold: false, size: TEXT };
  const shown = captions.map((caption, at) => ({ caption, data: pictures[at] ?? null, unreadable }));
  for (let from = 0; from < shown.length; from += across) {
    const row = sheet.pictureRow(shown.slice(from, from + across), across, style);
    // the heading goes with the first row
    sheet.keep(row.height + (from === 0 ? 4 * HEADING : GAP));
    if (from === 0) drawBlock(sheet, { block: "heading", text });
    sheet.space(GAP);
    row.draw();
  }
}

function drawBlock(sheet: PdfSheet, block: Exclude<Block, PaperPictures>): void {
  switch (block.block) {
    case "heading":
      // not alone at the foot of a sheet
      sheet.keep(5 * HEADING);
      sheet.space(2 * GAP);
      sheet.text(block.text, { bold: true, size: HEADING });
      return;
    case "text":
      sheet.space(GAP / 2);
      sheet.text(block.text, { bold: false, size: TEXT });
      return;
    case "list":
      block.items.forEach((item, at) => {
        sheet.space(GAP / 3);
        sheet.item(block.numbered ? `${at + 1}.` : "•", item, { bold: false, size: TEXT }, INDENT);
      });
      return;
    case "caution":
      sheet.space(GAP);
      for (const item of block.items) sheet.boxed(item, { bold: true, size: TEXT }, INSET);
      return;
    case "table":
      drawTable(sheet, block);
      return;
    // drawn beside the head
    case "code":
      return;
  }
}

function drawTable(sheet: PdfSheet, { head, rows, sums, shares }: PaperTable): void {
  const style = { bold: false, size: head.length > 3 ? TEXT - 1.5 : TEXT };
  const strong = { ...style, bold: true };
  const drawHead = () => {
    sheet.row(head, shares, strong, rows[0] ?? head);
    sheet.rule();
  };
  sheet.space(GAP);
  drawHead();
  rows.forEach((row, at) => {
    if (at > 0 && at === rows.length - sums) sheet.rule();
    const cells = row.map((cell) => (typeof cell === "string" ? cell : cell.text));
    const turned = sheet.row(cells, shares, at >= rows.length - sums ? strong : style, row, drawHead);
    if (!turned) sheet.space(1);
  });
}
