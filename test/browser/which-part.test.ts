/** The card of a new part on a phone: which part will do, and one candidate set beside the original. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

describe("the card of a new part", () => {
  it("tells what the place asks, names the customs, and judges what is typed off a data sheet", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/new`);
    await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    await page.getByRole("tab", { name: "Enter" }).click();
    const part = page.getByRole("region", { name: "A part" });
    await part.getByLabel("Part").fill("Q3");
    await part.getByRole("button", { name: "Replace", exact: true }).click();
    expect((await cardReady(page)).action).toBe("replace");

    await page.getByText("Which part will do").click();
    const body = page.locator(".which-part-body");
    await body.getByText("gate charge at most 1.3 times the original's").waitFor();
    await body.getByText("a bigger IGBT is always better").first().waitFor();
    await body.getByLabel("gate charge, was there").fill("100nC");
    await body.getByLabel("gate charge, candidate").fill("160nC");
    await body.getByLabel("voltage, candidate").fill("650V");
    const verdict = body.getByRole("status");
    await verdict.getByText(/gate charge 160 nC, original 100 nC: at most 130 nC wanted/).waitFor();
    expect(await verdict.getAttribute("data-fits")).toBe("no");
    await body.getByLabel("gate charge, candidate").fill("160 Ah");
    await body.getByText(/expected gate charge in C/).waitFor();

    await inspect(page, "which-part");

    // what was typed is there again after a look elsewhere
    await page.getByRole("button", { name: "Back to the proposal" }).click();
    await page.getByRole("tab", { name: "Enter" }).click();
    await part.getByLabel("Part").fill("Q3");
    await part.getByRole("button", { name: "Replace", exact: true }).click();
    await page.getByText("Which part will do").click();
    expect(await body.getByLabel("voltage, candidate").inputValue()).toBe("650V");

    // and after a reload
    await page.reload();
    await cardReady(page);
    await page.getByRole("tab", { name: "Enter" }).click();
    await part.getByLabel("Part").fill("Q3");
    await part.getByRole("button", { name: "Replace", exact: true }).click();
    await page.getByText("Which part will do").click();
    await body.getByLabel("voltage, candidate").waitFor();
    expect(await body.getByLabel("gate charge, was there").inputValue()).toBe("100nC");
    await page.context().close();
  });
});
