import { type Context, Hono } from "hono";
import type { AlbumStore, BoardAlbum, BoardFace } from "../job/board-album.ts";
import type { Picture } from "../job/job-store.ts";
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import {
  ALBUM_BYTES,
  type AlbumAnswer,
  type AppendAnswer,
  PICTURE_BYTES,
  type PictureAnswer,
} from "../wire/job-api.ts";
import { problem, refusal } from "./answers.ts";
import { metadataOf } from "./picture-metadata.ts";
import { limitBody, readJson } from "./read-body.ts";
import { isId, parseAlbumVersion } from "./request-shapes.ts";
import { sniffPicture } from "./sniff-picture.ts";

/** Pictures of boards and the places pinned on them, under `/api/board-pictures` and `/api/albums`. */
export function albumRoutes(store: AlbumStore): Hono {
  const routes = new Hono();
  routes.post("/board-pictures/:id", limitBody(PICTURE_BYTES), async (context) => {
    const read = pictureIn(context.req.param("id"), new Uint8Array(await context.req.arrayBuffer()));
    if (!read.ok) return problem(context, `picture: ${read.problem}`, 415);
    const written = await store.keepPicture(read.value);
    if (!written.ok) return refusal(context, written);
    const { id, type, data } = read.value;
    return context.json<PictureAnswer>({ id, type, bytes: data.length }, written.added === 1 ? 201 : 200);
  });
  routes.get("/board-pictures/:id", async (context) => {
    const id = context.req.param("id");
    const picture = await store.readPicture(id);
    if (picture === null) return problem(context, said`there is no picture "${id}" of a board`, 404);
    return pictureBody(context, picture);
  });
  routes.get("/albums", async (context) => {
    const last = await store.readAlbum(context.req.query("board") ?? "");
    return context.json<AlbumAnswer>({ album: last?.album ?? null, version: last?.id ?? null });
  });
  routes.post("/albums", limitBody(ALBUM_BYTES), async (context) => {
    const board = context.req.query("board") ?? "";
    if (board === "") return problem(context, "board: which board's pictures? Give its name", 400);
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const version = parseAlbumVersion(body.value);
    if (!version.ok) return problem(context, version.problem, 400);
    for (const { picture } of facesIn(version.value.album))
      if ((await store.readPicture(picture)) === null)
        return problem(context, said`album: there is no picture "${picture}" of a board; send it first`, 422);
    const written = await store.keepAlbum(board, version.value);
    if (!written.ok) return refusal(context, written);
    return context.json<AppendAnswer>(
      { added: written.added, length: written.length },
      written.added === 1 ? 201 : 200,
    );
  });
  return routes;
}

/** Those shown, and those that wait for somebody to say which holds. */
function facesIn({ faces, conflicts = [] }: BoardAlbum): readonly BoardFace[] {
  const waiting = conflicts.flatMap(({ ways }) => ways.flatMap(({ face }) => face ?? []));
  return [...faces, ...waiting];
}

/** A picture is never another under the same address: whoever has it keeps it. */
export function pictureBody(context: Context, { type, data }: Picture): Response {
  return context.body(new Uint8Array(data), 200, {
    "Content-Type": type,
    "Cache-Control": "private, max-age=31536000, immutable",
  });
}

function pictureIn(id: string, data: Uint8Array): Parsed<Picture> {
  if (!isId(id)) return { ok: false, problem: "an id is 1 to 64 of letters, digits, _ and -" };
  const type = sniffPicture(data);
  if (type === null) return { ok: false, problem: "this is neither a JPEG nor a PNG" };
  const metadata = metadataOf(data, type);
  if (metadata !== null)
    return {
      ok: false,
      problem: `it carries ${metadata}; choose it on the page, which draws it anew without`,
    };
  return { ok: true, value: { id, type, data } };
}
