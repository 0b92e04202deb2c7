/**
 * What page and server say to each other of papers.
 *
 * POST /api/papers   PdfRequest -> the paper as a PDF file
 */
import type { Paper } from "../papers/paper.ts";

export type { Block, Paper, PaperHead, PaperKind, PaperPictures, PaperTable } from "../papers/paper.ts";
export { PAPER_KINDS } from "../papers/paper.ts";

/** Largest paper that is laid out, bytes. */
export const PAPER_BYTES = 1_000_000;

export interface PdfRequest {
  readonly paper: Paper;
  readonly size: "a4" | "letter" | "label";
  /** the job's pictures that the paper shows, by their ids; left out: it shows none */
  readonly pictures?: { readonly job: string; readonly ids: readonly string[] };
}
