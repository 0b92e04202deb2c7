import { describe, expect, it } from "vitest";
import { mayBeMapped, typesSomething } from "./commands.ts";
import { readHandsSettings } from "./hands-settings.ts";
import { spokenWords } from "./spoken-words.ts";

describe("a step said aloud", () => {
  it("has its units and pins in full, and nothing that nobody hears", () => {
    expect(spokenWords("DC volts: red on C5 pin plus (capacitor, 470 uF), black on C5.minus")).toBe(
      "DC volts, red on C5 pin plus, capacitor, 470 micro farad, black on C5 pin minus",
    );
    expect(spokenWords("Clip 2.2 kohm across C5")).toBe("Clip 2.2 kilo ohm across C5");
    expect(spokenWords("black on DC bus - (minus pin of C1)")).toBe("black on DC bus minus, minus pin of C1");
    expect(spokenWords("expect 15 V at 0.5 A")).toBe("expect 15 volts at 0.5 amps");
  });
});

describe("keys of a person's own", () => {
  it("may be any but those that a browser or a screen reader needs", () => {
    for (const key of ["PageDown", "F13", "b", "AudioVolumeUp"]) expect(mayBeMapped(key), key).toBe(true);
    for (const key of ["Tab", "Escape", "Enter", " ", "Shift", "Unidentified"])
      expect(mayBeMapped(key), key).toBe(false);
  });

  it("leave a letter to the field that has the cursor", () => {
    expect(typesSomething("b")).toBe(true);
    expect(typesSomething("PageDown")).toBe(false);
  });

  it("are the usual ones where nothing, or nonsense, was kept; the voice is off and the screen stays awake", () => {
    const usual = { keys: {}, speaks: false, staysAwake: true };
    for (const text of [null, "", "{", "7", "null", '{"keys":3}'])
      expect(readHandsSettings(text)).toEqual(usual);
    expect(readHandsSettings('{"keys":{"F13":"undo","Tab":"undo","b":"explode"},"speaks":true}')).toEqual({
      ...usual,
      keys: { F13: "undo" },
      speaks: true,
    });
  });
});
