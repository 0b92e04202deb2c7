/** The meter on the wire: its readings flow into a job by one tap, a wrong mode is said, and typing goes on beside it. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { LoopbackInstrument } from "../../src/hookup/loopback-instrument.fixture.ts";
import { cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;
let instrument: LoopbackInstrument;

beforeAll(async () => {
  served = await servePage();
  instrument = await LoopbackInstrument.start({ figures: ["+2.10000000E-03"] });
});

afterAll(async () => {
  await served?.close();
  await instrument?.stop();
});

interface Read {
  readonly mode: string;
  readonly reading: unknown;
  readonly settling?: string;
  readonly instrument?: string;
}

async function readings(id: string): Promise<Read[]> {
  const job = await served.store.readJob(id);
  return (job?.events ?? []).flatMap((event) => (event.do === "measure" ? [event] : []));
}

const wire = (page: Page) => page.getByRole("region", { name: "Meter on the wire" });
const take = (page: Page) => wire(page).getByRole("button", { name: /^Take/ });

/** Takes readings of next to nothing until the card asks for a cold mode. */
async function proveDead(page: Page): Promise<void> {
  while ((await page.locator(".mode").first().textContent())?.includes("DC volts") === true) {
    const entries = await page.locator(".card").getAttribute("data-entry");
    await take(page).click();
    await page.locator(`.card:not([data-entry="${entries}"])`).waitFor();
    await cardReady(page);
  }
}

describe("the meter on the wire", () => {
  it("by SCPI: set on the page, set to each check's mode, taken by one tap, timed while it climbs", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/meter`);
    await page.getByRole("radio", { name: /SCPI over the network/ }).check();
    await page.getByLabel("Its address").fill("nonsense here");
    await page.getByRole("button", { name: "Connect" }).click();
    await page.getByText(/is no address/).waitFor();
    await page.getByLabel("Its address").fill(`127.0.0.1:${instrument.address.port}`);
    await page.getByRole("button", { name: "Connect" }).click();
    await page.getByText("LOOPBACK INSTRUMENTS DM-1, set to DC volts").waitFor();
    await inspect(page, "meter-scpi-390");

    await page.goto(`${served.url}#/new`);
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    await wire(page)
      .getByText(/see that both probes make contact/)
      .waitFor();
    await proveDead(page);
    const proofs = await readings(id);
    expect(proofs.length).toBeGreaterThan(0);
    for (const proof of proofs)
      expect(proof).toMatchObject({ mode: "dcv", reading: 0.0021, instrument: "LOOPBACK INSTRUMENTS DM-1" });

    // a charging capacitor: open, then 0.1 V a reading up; what counts is the figure two seconds after the touch
    instrument.manners.turnedTo = "RES";
    await wire(page)
      .getByText(/The meter is set to ohms\. Turn it to/)
      .waitFor();
    expect(await take(page).count()).toBe(0);
    await inspect(page, "meter-wrong-mode-390");
    instrument.manners.turnedTo = null;
    const rise = Array.from({ length: 60 }, (_, at) => (0.01 * (at + 1)).toExponential(3));
    instrument.show("+9.9E37", "+9.9E37", ...rise);
    await wire(page)
      .getByText(/Still climbing/)
      .waitFor();
    await inspect(page, "meter-climbing-390");
    const shown = await take(page).textContent();
    await take(page).click();
    await cardReady(page);
    const climbed = (await readings(id)).at(-1);
    expect(climbed?.settling).toBe("climbing");
    expect(Number(climbed?.reading)).toBeGreaterThan(0.05);
    expect(shown).toContain(Number(climbed?.reading).toFixed(3));

    await page.locator("body").press("f");
    await page.keyboard.type("0.47");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await readings(id)).at(-1)?.reading).toBe(0.47);
    expect((await readings(id)).at(-1)?.instrument).toBeUndefined();

    // the usual readings, cell by cell: one tap takes one, and the next cell opens; the card waits for the grid
    const cellOpen = page.locator('.cell[aria-expanded="true"]');
    instrument.show("+9.9E37", "+9.9E37", "+4.550000E-01");
    await page.getByRole("tab", { name: "Grid" }).click();
    await page.locator(".cell").first().click();
    const cells = [await cellOpen.textContent()];
    await take(page).click();
    await expect
      .poll(async () => (await readings(id)).at(-1))
      .toMatchObject({ mode: "diode", reading: 0.455, instrument: "LOOPBACK INSTRUMENTS DM-1" });
    await wire(page).getByText("Lift the probes and go on").waitFor();
    cells.push(await cellOpen.textContent());
    expect(new Set(cells).size).toBe(2);
    await inspect(page, "meter-grid-390");
    await page.setViewportSize({ width: 1366, height: 768 });
    await wire(page).getByText("The meter is reading for the grid.").waitFor();
    instrument.show("+9.9E37", "+9.9E37", "+4.610000E-01");
    await page.locator(".cell-entry .wire-figure").getByText("0.461 V").waitFor();
    await page.locator('.cell-entry .on-the-wire [data-key="t"]').waitFor();
    await page.locator("body").press("t");
    await expect.poll(async () => (await readings(id)).at(-1)?.reading).toBe(0.461);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByRole("tab", { name: "Log" }).click();
    await page
      .getByText(/off the wire \(LOOPBACK INSTRUMENTS DM-1\)/)
      .first()
      .waitFor();
    await page.context().close();
  });

  it("by sigrok: its demo driver's figure is taken at rest, and said to be in the wrong mode at a check of AC volts", async () => {
    const page = await served.laptop();
    await page.goto(`${served.url}#/meter`);
    await page.getByRole("radio", { name: /sigrok reads/ }).check();
    await page.getByLabel("The meter's driver").fill("pattern");
    await page.getByRole("button", { name: /demo Demo driver/ }).click();
    await page.getByLabel(/Its display/).fill("A0");
    await page.getByRole("button", { name: "Connect" }).click();
    await page.getByText("sigrok demo, set to DC volts").waitFor();
    await inspect(page, "meter-sigrok-1366");

    await page.goto(`${served.url}#/new`);
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 4 });
    await take(page).click({ timeout: 15_000 });
    await expect
      .poll(async () => (await readings(id))[0])
      .toMatchObject({ mode: "dcv", instrument: "sigrok demo" });
    expect(Math.abs(Number((await readings(id))[0]?.reading))).toBe(10);
    await page.getByRole("tab", { name: "Enter" }).click();
    await page.getByLabel("Mode").selectOption("acv");
    await page.getByLabel("Red on").fill("L_IN");
    await page.getByLabel("Black on").fill("N_IN");
    await page.getByRole("button", { name: "Put it on the card" }).click();
    await wire(page).getByText("The meter is set to DC volts. Turn it to AC volts").waitFor();
    // a cold check of one's own, nothing proven dead: held back, and its title is there for a screen reader
    await page.getByRole("tab", { name: "Enter" }).click();
    await page.getByLabel("Mode").selectOption("diode");
    await page.getByLabel("Red on").fill("L_IN");
    await page.getByLabel("Black on").fill("N_IN");
    await page.getByRole("button", { name: "Put it on the card" }).click();
    await page.getByRole("heading", { level: 2, name: /^Diode mode, red on L_IN/ }).waitFor();
    await page.getByRole("heading", { level: 3, name: "Not proven dead" }).waitFor();
    await inspect(page, "own-check-held-back-1366");
    await page.context().close();
  });
});
