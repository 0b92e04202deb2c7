import { describe, expect, it } from "vitest";
import { plain, type Sayings, said, saidCount } from "./said.ts";
import { finder, tell } from "./tell.ts";

const SPANISH: Sayings = {
  "Shows whether {0}.": "Muestra si {0}.",
  "{0} is open": "{0} está abierto",
  "{0} before {1}": "{1} después de {0}",
  "{0} readings of {1}": {
    en: "one reading of {1}",
    one: "{0} lectura de {1}",
    other: "{0} lecturas de {1}",
  },
  Next: "Siguiente",
};
const teller = {
  find: finder(SPANISH),
  category: (count: number) => (count === 1 ? "one" : "other"),
  value: (text: string) => text.replace(".", ","),
};

describe("a text", () => {
  it("reads as English without its marks, texts inside texts too", () => {
    const text = said`Shows whether ${said`${"F1"} is open`}.`;
    expect(plain(text)).toBe("Shows whether F1 is open.");
    expect(plain(said`Next`)).toBe("Next");
    expect(plain(`${said`Next`} ${text}`)).toBe("Next Shows whether F1 is open.");
  });

  it("is told in another language, whatever stands around it left as it is", () => {
    const text = `${said`Next`}: ${said`Shows whether ${said`${"F1"} is open`}.`} (Q1)`;
    expect(tell(text, teller)).toBe("Siguiente: Muestra si F1 está abierto. (Q1)");
  });

  it("puts values where the other language wants them, in its form", () => {
    expect(tell(said`${"0.4 V"} before ${1.5}`, teller)).toBe("1,5 después de 0,4 V");
  });

  it("stays English where there is no saying, and what is filled in is told all the same", () => {
    expect(tell(said`Perhaps ${said`${"F1"} is open`}`, teller)).toBe("Perhaps F1 está abierto");
  });

  it("without any mark is told as it is", () => {
    expect(tell("a note of a person: 0.5", teller)).toBe("a note of a person: 0.5");
  });
});

describe("a text that counts", () => {
  it("takes the form of its count in either language", () => {
    const readings = (count: number) => saidCount(count, "one reading of {1}", "{0} readings of {1}", "F1");
    expect(plain(readings(3))).toBe("3 readings of F1");
    expect(plain(readings(1))).toBe("one reading of F1");
    expect(tell(readings(3), teller)).toBe("3 lecturas de F1");
    expect(tell(readings(1), teller)).toBe("1 lectura de F1");
  });
});
