import { expect, test } from "vitest";
import { plain } from "../messages/said.ts";
import { lampAdvice, lampFor, lampsOf, limitFor } from "./limiter.ts";

test("for 10 W of idle the lamp is the smallest at hand whose 0.32 P is half as much again: 60 W, not 40", () => {
  expect(0.32 * 40).toBeLessThan(15);
  expect(lampFor(["lamp-40", "lamp-60", "lamp-200"], 10)).toEqual({ watts: 60, carries: true });
});

test("a board that idles at 20 W wants the 100 W lamp of the trade's table", () => {
  expect(lampFor(["lamp-60", "lamp-100", "lamp-150"], 20)?.watts).toBe(100);
});

test("after a lamp that pulsed the next larger one is taken, if there is one", () => {
  expect(lampFor(["lamp-40", "lamp-60", "lamp-200"], 5, 40)?.watts).toBe(60);
  expect(lampFor(["lamp-40"], 5, 40)).toBeNull();
});

test("with too small a lamp alone the advice says that pulsing may be the lamp", () => {
  const lamp = lampFor(["lamp-40"], 20);
  expect(lamp).toEqual({ watts: 40, carries: false });
  expect(lamp && plain(lampAdvice(lamp, 20))).toMatch(/about 13 W.*too small/);
});

test("no lamp is proposed that the bench does not have", () => {
  expect(lampFor(["bench-supply", "lamp-holder"], 10)).toBeNull();
  expect(lampsOf(["lamp-0", "lamp-x"])).toEqual([]);
});

test("a bench supply's limit is the smallest usual one that a good rail stays under", () => {
  expect(limitFor(0.05)).toBe(0.1);
  expect(limitFor(0.195)).toBe(0.3);
  expect(limitFor(9)).toBe(1);
});
