import { Hono } from "hono";
import { expect, it } from "vitest";
import { plain, said } from "../messages/said.ts";
import { problem } from "./answers.ts";

async function answered(text: string): Promise<unknown> {
  const app = new Hono().get("/", (context) => problem(context, text, 422));
  return (await app.request("/")).json();
}

it("a problem that can be told goes out twice: plain for a script, with its seams for the page", async () => {
  const text = said`job: ${said`there is no part "${"R9"}"`}`;
  expect(await answered(text)).toEqual({ error: plain(text), said: text });
  expect(plain(text)).toBe('job: there is no part "R9"');
});

it("one that cannot be told goes out as it is, in one line", async () => {
  expect(await answered("body: not\n  JSON")).toEqual({ error: "body: not JSON" });
});
