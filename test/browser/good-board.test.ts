/** A traced circuit becomes a board on a phone; a good one is read, then lies beside a dead one; the next job knows. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const CHIPS = { HALFDRV: "ic", DUALCMP: "ic" } as const;
const TEST_MS = 180_000;

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

it(
  "from the traced file to what a good one reads at the next job's intake",
  async () => {
    const page = await served.phone();
    const choose = (label: string, value: string) =>
      page.getByLabel(new RegExp(`^${label}`)).selectOption(value);
    await page.goto(`${served.url}#/boards`);
    await page.locator("input[type=file]").setInputFiles("test/kicad/half-bridge.net");
    await page.getByText("No board yet: the file does not say what the board runs on").waitFor();
    expect(await page.getByRole("button", { name: "Keep this board" }).isDisabled()).toBe(true);
    await choose("Live comes in on", "L");
    await choose("Neutral comes in on", "N");
    await choose("Rails are measured against", "GND");
    await page.getByText(/3 names are still left out/).waitFor();
    await choose("What Conn_01x02 is", "left out");
    for (const [name, kind] of Object.entries(CHIPS)) await choose(`What ${name} is`, kind);
    await inspect(page, "traced-mapping");
    const supplied = page.getByRole("group", { name: /^HALFDRV/ });
    await supplied.getByLabel(/^Pin 1 /).fill("vcc");
    await page.getByLabel("What to call the board").fill("bench driver");
    await page.getByText(/^A board of \d+ parts/).waitFor();
    await page.getByRole("button", { name: "Keep this board" }).click();

    await page.getByRole("heading", { name: "bench driver" }).waitFor();
    await page.getByText("What good ones read").click();
    await page.getByLabel("Red on the good one").fill("PBUS");
    await page.getByLabel("Black on the good one").fill("GND");
    for (const reading of ["98k", "102k"]) {
      await page.getByLabel("What it reads").fill(reading);
      await page.getByRole("button", { name: "Write it down" }).click();
      await expect.poll(() => page.getByLabel("What it reads").inputValue()).toBe("");
    }
    await page.getByText(/what a good one read here: 100 kohm, 2 readings, \+- 3 %/).waitFor();
    await inspect(page, "good-readings");

    await page.goto(`${served.url}#/new`);
    await page.getByRole("radio", { name: "bench driver" }).check();
    await page.getByRole("radio", { name: /^Surge/ }).check();
    await page.getByRole("button", { name: "Start the job" }).click();
    const digits = async (reading: string) => {
      await page.locator(".card [data-digits]").fill(reading);
      await page.getByRole("button", { name: "Enter", exact: true }).click();
    };
    while (/^DC volts/.test((await cardReady(page)).headline)) await digits("0.1");
    await page.getByText("A good one beside it").click();
    await page.getByRole("checkbox", { name: /A good board of this number is here/ }).check();
    await page.getByRole("tab", { name: "Enter" }).click();
    await choose("Mode", "ohms");
    await page.getByLabel("Red on", { exact: true }).fill("PBUS");
    await page.getByLabel("Black on", { exact: true }).fill("GND");
    await page.getByRole("button", { name: "Put it on the card" }).click();
    await page
      .getByText(/A good board shows .*what a good one read here: 100 kohm, 2 readings, \+- 3 %/)
      .waitFor();
    await digits("4k7");
    await page.getByText("What does the good one read at the same places?").waitFor();
    await inspect(page, "beside-card");
    await digits("high");
    await page.getByText("Of the good one the digits are wanted").waitFor();
    await digits("101k");
    await page.getByRole("list", { name: "Last read on both" }).getByText("21 times lower").waitFor();
    await cardReady(page);
    await inspect(page, "beside-compared");
    const id = new URL(page.url()).hash.replace("#/job/", "");
    const log = (await served.store.readJob(id))?.events.slice(-2);
    expect(log).toMatchObject([
      { do: "measure", mode: "ohms", red: "PBUS", black: "GND", reading: 4700 },
      { do: "beside", mode: "ohms", red: "PBUS", black: "GND", reading: 101_000 },
    ]);
    await page.getByRole("tab", { name: "Close" }).click();
    await page.getByRole("button", { name: "Customer declined" }).click();
    await page.getByRole("button", { name: /^Close the job/ }).click();
    await page.getByRole("button", { name: "All jobs" }).waitFor();

    await page.goto(`${served.url}#/new`);
    await page.getByText("Likelihoods start from what 1 closed job taught.").waitFor({ timeout: 60_000 });
    await page.goto(`${served.url}#/boards`);
    await page.getByRole("link", { name: /^bench driver/ }).click();
    await page.getByText("What good ones read").click();
    await page
      .getByRole("region", { name: "From jobs with a good one beside" })
      .getByText("101 kohm")
      .waitFor();
    await page.getByText("Versions kept").click();
    const versions = page.getByRole("list", { name: "Versions kept" }).getByRole("listitem");
    await expect.poll(() => versions.count()).toBe(3);
    expect(await versions.first().getByRole("link").count()).toBe(1);
    await inspect(page, "versions");
    await versions.last().getByRole("button", { name: "Go back to version 1" }).click();
    await expect.poll(() => versions.count()).toBe(4);
    await page
      .getByText(/^nothing yet|^one check/)
      .first()
      .waitFor();
    expect(await versions.nth(1).getByRole("link").count()).toBe(1);
    await page.context().close();
  },
  TEST_MS,
);
