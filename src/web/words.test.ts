/** Figures and short words of the page, in English as ever and in the form of other readers. */
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type { Language } from "../messages/language.ts";
import { plain } from "../messages/said.ts";
import { spokenWords } from "./hands/spoken-words.ts";
import { chooseLanguage, say } from "./say.ts";
import {
  actionWords,
  minutes,
  money,
  percent,
  quantity,
  range,
  restsOnWords,
  sightWords,
  verdictWords,
} from "./words.ts";

/** What sets a Latin figure apart is not seen. */
const seen = (text: string) => text.replace(/[\u2066-\u2069\u200e\u200f\u061c]/g, "").replace(/\u00a0/g, " ");

function inLanguage(language: Language): void {
  beforeAll(async () => {
    vi.stubGlobal("document", { documentElement: {} });
    await chooseLanguage(language);
  });
  afterAll(async () => {
    await chooseLanguage("en");
    vi.unstubAllGlobals();
  });
}

const MEASURE = { do: "measure", mode: "diode", red: "U1.3", black: "C5.minus" } as const;

describe("in English", () => {
  it("figures keep their digits and units", () => {
    expect([minutes(0), minutes(0.4), minutes(2.5), minutes(34)]).toEqual([
      "0 min",
      "24 s",
      "2.5 min",
      "34 min",
    ]);
    expect([percent(0), percent(0.004), percent(0.62), percent(0.999)]).toEqual([
      "0 %",
      "<1 %",
      "62 %",
      ">99 %",
    ]);
    expect([money(2.1, "EUR"), money(340, "USD"), money(12.5, "coins")]).toEqual([
      "€2.10",
      "$340",
      "12.50 coins",
    ]);
    expect([quantity(0.455, "V"), quantity(4700, "Ω"), range(10, 20, "Ω")]).toEqual([
      "0.46 V",
      "4.7 kΩ",
      "10 Ω to 20 Ω",
    ]);
  });

  it("an action without a headline has one sentence", () => {
    expect(plain(actionWords(MEASURE))).toBe("Diode mode, red on U1.3, black on C5.minus");
    expect(plain(actionWords({ do: "measure", mode: "temperature", part: "Q1" }))).toBe("Temperature of Q1");
    expect(plain(actionWords({ do: "clip", at: ["C5.plus", "C5.minus"] }))).toBe(
      "Clip on C5.plus and C5.minus",
    );
    expect(plain(actionWords({ do: "close", verdict: "no-fault" }))).toBe("Close: No fault on this board");
    expect(plain(actionWords({ do: "unpower" }))).toBe("Switch off and unplug");
  });

  it("a sight is told by its key, whatever follows it", () => {
    expect(sightWords("lamp-dark, then 15 V")).toBe("Lamp dark, then 15 V");
    expect(sightWords("10 V or more")).toBe("10 V or more");
  });

  it("of the parts nobody has seen the first four are named", () => {
    expect(restsOnWords(["R1", "R2"])).toBe("Rests on R1, R2, which nobody has seen.");
    expect(restsOnWords(["R1", "R2", "R3", "R4", "R5"])).toBe(
      "Rests on R1, R2, R3, R4 and 1 more, which nobody has seen.",
    );
  });
});

describe("in Spanish", () => {
  inLanguage("es");

  it("figures have their comma, a pin keeps its point", () => {
    expect([minutes(2.5), quantity(0.455, "V"), range(0.1, 0.5, "V")]).toEqual([
      "2,5 min",
      "0,46 V",
      "0,10 V a 0,50 V",
    ]);
    expect(say(actionWords(MEASURE))).toBe("Modo diodo, rojo en U1.3, negro en C5.minus");
    expect(seen(money(2.1, "EUR"))).toBe("2,10 €");
    expect(verdictWords("repaired")).toBe("Reparada");
  });

  it("units are heard in full", () => {
    expect(spokenWords("Voltios CC, rojo en C5.plus: 2,2 kohm, 15 V")).toBe(
      "Voltios CC, rojo en C5 patilla plus, 2,2 kiloohmios, 15 voltios",
    );
  });
});

describe("in Arabic", () => {
  inLanguage("ar");

  it("counts have the digits of the language, readings those of the meter", () => {
    expect(seen(percent(0.62))).toBe("٦٢٪");
    expect(seen(minutes(2.5))).toBe("2.5 min");
    expect(seen(say(actionWords(MEASURE)))).toBe("وضع الثنائي، الأحمر على U1.3، الأسود على C5.minus");
  });
});
