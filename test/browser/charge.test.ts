/** The charge of a board on a phone: each store with its volts, the gates, and one tap with a reason to go on against them. */
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

const events = async (id: string) => (await served.store.readJob(id))?.events ?? [];

describe("the charge of a board on a phone", () => {
  it("shows each store, holds power and hands back, and takes one tap with its reason to go on", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/new`);
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    const strip = page.locator(".stores");
    await strip.getByText(/0 of \d+ proven empty: no hand, no cold check/).waitFor();
    await inspect(page, "charge-unknown");

    // the first store reads charged
    await page.locator("body").press("f");
    await page.keyboard.type("160");
    await page.keyboard.press("Enter");
    await strip.locator('.store-chip[data-state="charged"]').waitFor();
    await page.getByRole("button", { name: "Leave the row" }).click();
    expect((await cardReady(page)).action).toBe("clip");
    await strip.locator("summary").click();
    await strip.getByText(/charged, read at .*log line 1/).waitFor();
    await inspect(page, "charge-charged");
    await strip.locator("summary").click();

    // the resistor goes on: no power with it
    await page.getByRole("button", { name: "Done", exact: true }).click();
    await cardReady(page);
    await page.getByRole("tab", { name: "Enter" }).click();
    await page.getByRole("button", { name: "Mains", exact: true }).click();
    const held = page.getByRole("region", { name: "A resistor is clipped on" });
    await held.getByText(/still clipped on between/).waitFor();
    expect(await page.getByRole("button", { name: /^It is on: show what to watch/ }).count()).toBe(0);
    await inspect(page, "charge-resistor-on");
    await held.getByRole("button", { name: "It is meant to stay on for this run" }).click();
    await page.getByRole("button", { name: /^It is on: show what to watch/ }).waitFor();
    await page.getByRole("button", { name: "Back to the proposal" }).click();

    // a pin of one's own choice: not before the proof, or a reason
    await page.getByRole("tab", { name: "Enter" }).click();
    await page.getByRole("region", { name: "One pin" }).getByLabel("Pin").fill("Q1.c");
    await page.getByRole("button", { name: "Lift", exact: true }).click();
    const unproven = page.getByRole("region", { name: "Not proven dead" });
    await unproven.waitFor();
    await inspect(page, "charge-not-proven");
    await unproven.getByRole("button", { name: "Emptied it through my own resistor" }).click();
    await page.getByRole("button", { name: "Done", exact: true }).click();
    await strip.getByText(/Proof overruled \(Emptied it through my own resistor\)/).waitFor();
    await inspect(page, "charge-overruled");

    await expect
      .poll(async () =>
        (await events(id)).map((event) => ("of" in event ? `${event.do} ${event.of}` : event.do)),
      )
      .toEqual(["measure", "clip", "overrule resistor", "overrule proof", "overrule proposal", "lift"]);
    await page.context().close();
  });

  it("holds the mains of one's own choosing back while a motor is plugged in unread, until one tap and its reason", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/new`);
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3, came: /^M1 / });
    const mains = page.getByRole("button", { name: "Mains", exact: true });
    const switchedOn = page.getByRole("button", { name: /^It is on: show what to watch/ });
    const record = page.getByRole("button", { name: "Record what power showed" });
    await page.getByRole("tab", { name: "Enter" }).click();
    await mains.click();
    const held = page.getByRole("region", { name: "A motor is plugged in" });
    await held.getByText(/M1 has not been read: pull its plug/).waitFor();
    expect(await switchedOn.count()).toBe(0);
    await inspect(page, "motor-unread");
    await held.getByRole("button", { name: "It runs on another board" }).click();
    // before the switch what may break, after it what to watch and mark
    await switchedOn.waitFor();
    expect(await record.count()).toBe(0);
    await inspect(page, "power-before");
    await switchedOn.click();
    await record.waitFor();
    await inspect(page, "power-on");
    await page.getByRole("button", { name: "It is not on yet: back to before" }).click();
    await switchedOn.waitFor();

    // what is looked at and listened for goes with it: two keys a part, what is not marked was not looked at
    await switchedOn.click();
    const signs = page.getByRole("region", { name: "Signs of life" });
    await signs.getByRole("group", { name: "LED1" }).getByRole("button", { name: "stays dark" }).click();
    const relay = signs.getByRole("group", { name: "K1" });
    await relay.getByRole("button", { name: "clicks" }).click();
    await relay.getByRole("button", { name: "clicks", pressed: true }).click();
    await page.getByRole("button", { name: "No output runs" }).click();
    await inspect(page, "power-signs");
    await record.click();
    await expect
      .poll(async () => (await events(id)).find((event) => event.do === "power"))
      .toMatchObject({ feed: "mains", observed: "quiet", signs: { LED1: false } });
    await page.getByRole("tab", { name: "Log" }).click();
    await page.getByText(/quiet, LED1: stays dark/).waitFor();
    await expect
      .poll(async () =>
        (await events(id)).map((event) => ("of" in event ? `${event.do} ${event.of}` : event.do)),
      )
      .toEqual(["overrule motor", "overrule proposal", "power"]);
    await page.context().close();
  });
});
