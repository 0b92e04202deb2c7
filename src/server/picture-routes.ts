import { Hono } from "hono";
import type { JobStore } from "../job/job-store.ts";
import { said } from "../messages/said.ts";
import { ID_PATTERN, PICTURE_BYTES, PICTURES_PER_JOB, type PictureAnswer } from "../wire/job-api.ts";
import { pictureBody } from "./album-routes.ts";
import { problem, refusal } from "./answers.ts";
import { limitBody } from "./read-body.ts";
import { sniffPicture } from "./sniff-picture.ts";

/** Pictures of a job, under `/api/jobs/:id/pictures`. */
export function pictureRoutes(store: JobStore): Hono {
  const routes = new Hono();
  routes.post("/:id/pictures/:picture", limitBody(PICTURE_BYTES), async (context) => {
    const { id: job, picture: id } = context.req.param();
    if (!ID_PATTERN.test(id)) {
      return problem(context, "picture: an id is 1 to 64 of letters, digits, _ and -", 400);
    }
    const data = new Uint8Array(await context.req.arrayBuffer());
    const type = sniffPicture(data);
    if (type === null) return problem(context, said`picture: ${said`this is neither a JPEG nor a PNG`}`, 415);
    const kept = await store.readJob(job);
    const isNew = kept !== null && !kept.pictures.some((picture) => picture.id === id);
    if (isNew && kept.pictures.length >= PICTURES_PER_JOB) {
      return problem(context, said`picture: ${said`a job holds ${PICTURES_PER_JOB} pictures at most`}`, 413);
    }
    const written = await store.addPicture(job, { id, type, data });
    if (!written.ok) return refusal(context, written);
    return context.json<PictureAnswer>({ id, type, bytes: data.length }, written.added === 1 ? 201 : 200);
  });
  routes.get("/:id/pictures/:picture", async (context) => {
    const { id: job, picture: id } = context.req.param();
    const picture = await store.readPicture(job, id);
    if (picture === null) return problem(context, said`job "${job}" has no picture "${id}"`, 404);
    return pictureBody(context, picture);
  });
  return routes;
}
