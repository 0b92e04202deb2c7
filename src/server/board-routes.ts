import { Hono } from "hono";
import { said } from "../messages/said.ts";
import type { BoardAnswer, BoardList } from "../wire/job-api.ts";
import { problem } from "./answers.ts";

/** Boards that come with the program: "one like this" to start a job from. */
export function boardRoutes(boards: readonly BoardAnswer[]): Hono {
  const routes = new Hono();
  routes.get("/", (context) => {
    const list: BoardList = { boards: boards.map(({ id, title }) => ({ id, title })) };
    return context.json(list);
  });
  routes.get("/:id", (context) => {
    const id = context.req.param("id");
    const board = boards.find((shipped) => shipped.id === id);
    if (board === undefined) return problem(context, said`there is no board "${id}"`, 404);
    // Typed through unknown: a board file is deep enough to exhaust the type of a JSON answer.
    return context.json({ id: board.id, title: board.title, board: board.board } as never);
  });
  return routes;
}
