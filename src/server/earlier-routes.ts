import { Hono } from "hono";
import type { JobStore } from "../job/job-store.ts";
import type { EarlierList } from "../wire/job-api.ts";
import { problem } from "./answers.ts";

const MOST_NAME = 500;

/** What boards of this number, or of its family, had before. */
export function earlierRoutes(store: JobStore): Hono {
  const routes = new Hono();
  routes.get("/", async (context) => {
    const { name = "", family = "", identity = name } = context.req.query();
    if (name === "" && family === "") return problem(context, "name or family: one of them is needed", 400);
    if ([name, family, identity].some(({ length }) => length > MOST_NAME))
      return problem(context, `name, family, identity: longer than ${MOST_NAME} letters`, 400);
    return context.json<EarlierList>({ jobs: [...(await store.earlierJobs({ name, family, identity }))] });
  });
  return routes;
}
