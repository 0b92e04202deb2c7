import { describe, expect, it } from "vitest";
import type { Paper } from "../wire/paper-api.ts";
import { paperRoutes } from "./paper-routes.ts";

const PAPER: Paper = {
  language: "ar",
  direction: "rtl",
  title: "فاتورة",
  facts: [{ name: "من", value: "The bench", line: "من: The bench" }],
  blocks: [
    {
      block: "table",
      head: ["البيان", "EUR"],
      rows: [["عمل", { decimal: "5.20", text: "٥٫٢٠" }]],
      sums: 1,
      shares: [0.7, 0.3],
    },
  ],
};

const post = (body: unknown) =>
  paperRoutes(() => new Date(0)).request("/", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

describe("a paper that the page sends", () => {
  it("comes back as a PDF", async () => {
    const answer = await post({ paper: PAPER, size: "letter" });
    expect([answer.status, answer.headers.get("content-type")]).toEqual([200, "application/pdf"]);
    expect((await answer.text()).slice(0, 5)).toBe("%PDF-");
  });

  it("is refused with the field where it is none", async () => {
    const answer = await post({ paper: { ...PAPER, blocks: [{ block: "picture" }] }, size: "a4" });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain("paper.blocks.0");
  });
});
