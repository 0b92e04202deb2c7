import { Hono } from "hono";
import type { AcceptBoard, BoardStore } from "../job/board-store.ts";
import { said } from "../messages/said.ts";
import { type AppendAnswer, JOB_BYTES, type OwnBoardList } from "../wire/job-api.ts";
import { problem, refusal } from "./answers.ts";
import { limitBody, readJson } from "./read-body.ts";
import { isId, parseBoardVersion } from "./request-shapes.ts";

/** Boards of one's own, under `/api/own-boards`: what a phone has described, a laptop can work on. */
export function ownBoardRoutes(store: BoardStore, acceptBoard: AcceptBoard): Hono {
  const routes = new Hono();
  routes.get("/", async (context) => context.json<OwnBoardList>({ boards: [...(await store.listBoards())] }));
  routes.get("/:id", async (context) => {
    const id = context.req.param("id");
    const board = isId(id) ? await store.readBoard(id) : null;
    if (board === null) return problem(context, said`there is no board "${id}"`, 404);
    // Typed through unknown: a board file is deep enough to exhaust the type of a JSON answer.
    return context.json(board as never);
  });
  routes.post("/:id/versions", limitBody(JOB_BYTES), async (context) => {
    const id = context.req.param("id");
    if (!isId(id)) return problem(context, "board: an id is 1 to 64 of letters, digits, _ and -", 400);
    const body = await readJson(context);
    if (!body.ok) return problem(context, body.problem, 400);
    const version = parseBoardVersion(body.value);
    if (!version.ok) return problem(context, version.problem, 400);
    const refused = version.value.content === null ? null : acceptBoard(version.value.content);
    if (refused !== null) return problem(context, said`board: ${refused}`, 422);
    const written = await store.keepVersion(id, version.value);
    if (!written.ok) return refusal(context, written);
    const answer: AppendAnswer = { added: written.added, length: written.length };
    return context.json(answer, written.added === 1 ? 201 : 200);
  });
  return routes;
}
