/**
 * A paper as PDF, A4, tagged. The typeface is embedded: the faces that every reader has know no ohm sign and no name of half of the world, and
 * show something else without a word.
 */
import { createRequire } from "node:module";
import type PDFDocument from "pdfkit";
import type { Paper, PaperTable } from "./paper.ts";

const FACE = "dejavu-fonts-ttf/ttf/DejaVuSans.ttf";
const BOLD_FACE = "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf";
const MARGIN = 56;
const SMALL = 10;
const TITLE = 20;
const GAP = 6;
/** Shares of the width of a table of three columns. */
const COLUMNS = [0.5, 0.32, 0.18] as const;

type Pdf = PDFKit.PDFDocument;

/** The file's bytes. `made` is the time of making, which is written into it. */
export async function paperPdf(paper: Paper, made: Date): Promise<Uint8Array> {
  const { default: Document } = await import("pdfkit");
  const found = createRequire(import.meta.url);
  const pdf: Pdf = new Document({
    size: "A4",
    margin: MARGIN,
    tagged: true,
    lang: "en",
    displayTitle: true,
    info: { Title: paper.title, Creator: "Faultwright", CreationDate: made },
  });
  pdf.registerFont("plain", found.resolve(FACE)).registerFont("bold", found.resolve(BOLD_FACE));
  const done = bytesOf(pdf);
  pdf.font("bold").fontSize(TITLE).text(paper.title).moveDown(0.5);
  pdf.font("plain").fontSize(SMALL);
  for (const fact of paper.facts) pdf.text(fact);
  for (const one of paper.tables) drawTable(pdf, one);
  pdf.moveDown(1).font("plain").fontSize(SMALL);
  for (const note of paper.notes) pdf.text(note, MARGIN).moveDown(0.4);
  pdf.end();
  return done;
}

function bytesOf(pdf: InstanceType<typeof PDFDocument>): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    pdf.on("data", (piece: Uint8Array) => pieces.push(piece));
    pdf.on("error", reject);
    pdf.on("end", () => resolve(Buffer.concat(pieces)));
  });
}

function drawTable(pdf: Pdf, { title, head, rows, sums }: PaperTable): void {
  pdf.moveDown(1);
  if (title !== "")
    pdf
      .font("bold")
      .fontSize(SMALL + 2)
      .text(title, MARGIN)
      .moveDown(0.3);
  drawRow(pdf, head, true);
  rows.forEach((row, at) => {
    if (at === 0 || at === rows.length - sums) rule(pdf);
    drawRow(pdf, row, at >= rows.length - sums);
  });
}

function rule(pdf: Pdf): void {
  const { width } = pdf.page;
  pdf
    .moveTo(MARGIN, pdf.y)
    .lineTo(width - MARGIN, pdf.y)
    .lineWidth(0.6)
    .stroke();
  pdf.y += GAP / 2;
}

/** One row; what is too long for its column runs on below, and the row keeps together on one page. */
function drawRow(pdf: Pdf, cells: readonly string[], strong: boolean): void {
  const whole = pdf.page.width - 2 * MARGIN;
  pdf.font(strong ? "bold" : "plain").fontSize(SMALL);
  const widths = COLUMNS.map((share) => share * whole - GAP);
  const height = Math.max(...cells.map((cell, c) => pdf.heightOfString(cell, { width: widths[c] })));
  if (pdf.y + height > pdf.page.height - MARGIN) pdf.addPage();
  const top = pdf.y;
  let left = MARGIN;
  cells.forEach((cell, c) => {
    const align = c === cells.length - 1 ? "right" : "left";
    if (cell !== "") pdf.text(cell, left, top, { width: widths[c] ?? whole, align });
    left += (COLUMNS[c] ?? 0) * whole;
  });
  pdf.x = MARGIN;
  pdf.y = top + height + GAP / 2;
}
