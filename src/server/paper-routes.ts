import { Hono } from "hono";
import { z } from "zod";
import type { JobStore } from "../job/job-store.ts";
import { LANGUAGES } from "../messages/language.ts";
import { paperPdf } from "../print/paper-pdf.ts";
import { PAPER_SIZES } from "../print/paper-sizes.ts";
import { PICTURES_PER_JOB } from "../wire/job-api.ts";
import { PAPER_BYTES, type PdfRequest } from "../wire/paper-api.ts";
import { problem } from "./answers.ts";
import { limitBody, readJson } from "./read-body.ts";

const text = z.string().max(10_000);
const texts = z.array(text).max(5000);
const cell = z.union([text, z.strictObject({ decimal: text, text })]);
const block = z.discriminatedUnion("block", [
  z.strictObject({ block: z.literal("heading"), text }),
  z.strictObject({ block: z.literal("text"), text }),
  z.strictObject({
    block: z.literal("pictures"),
    text,
    captions: z.array(text).max(PICTURES_PER_JOB),
    across: z.union([z.literal(1), z.literal(2)]),
    unreadable: text,
  }),
  z.strictObject({ block: z.literal("list"), items: texts, numbered: z.boolean() }),
  z.strictObject({ block: z.literal("caution"), items: texts }),
  z.strictObject({
    block: z.literal("table"),
    head: z.array(text).min(1).max(12),
    rows: z.array(z.array(cell).max(12)).max(5000),
    sums: z.int().min(0),
    shares: z.array(z.number().min(0.02).max(1)).min(1).max(12),
  }),
  // as much as a code of this kind holds at its level
  z.strictObject({ block: z.literal("code"), content: z.string().min(1).max(1000), text }),
]);
const pdfRequest: z.ZodType<PdfRequest> = z.strictObject({
  paper: z.strictObject({
    language: z.enum(LANGUAGES.map(({ language }) => language)),
    direction: z.enum(["ltr", "rtl"]),
    title: text,
    facts: z.array(z.strictObject({ name: text, value: text, line: text })).max(50),
    blocks: z.array(block).max(500),
  }),
  size: z.enum(PAPER_SIZES),
  pictures: z
    .strictObject({ job: z.string(), ids: z.array(z.string()).max(PICTURES_PER_JOB) })
    .exactOptional(),
});

/** Papers laid out as PDF, under `/api/papers`: the page has their content, the server the typefaces and the pictures. */
export function paperRoutes(store: Pick<JobStore, "readPicture">, now: () => Date): Hono {
  const routes = new Hono();
  routes.post("/", limitBody(PAPER_BYTES), async (context) => {
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const read = pdfRequest.safeParse(body.value);
    if (!read.success) {
      const [first] = read.error.issues;
      return problem(
        context,
        `paper: ${first?.path.join(".") ?? ""}: ${first?.message ?? "not a paper"}`,
        422,
      );
    }
    const { paper, size, pictures } = read.data;
    const shown: Uint8Array[] = [];
    for (const id of pictures?.ids ?? []) {
      const picture = await store.readPicture(pictures?.job ?? "", id);
      if (picture === null) return problem(context, `paper: its job has no picture "${id}" here`, 422);
      shown.push(picture.data);
    }
    const bytes = await paperPdf(paper, size, now(), shown);
    return context.body(new Uint8Array(bytes), 200, { "Content-Type": "application/pdf" });
  });
  return routes;
}
