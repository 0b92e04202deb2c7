import { expect, test } from "vitest";
import { firstFeed, lampsOf } from "./limiter.ts";

test("the smallest lamp that carries 20 W of idle load by the 0.36 rule is 60 W", () => {
  expect(firstFeed(["lamp-40", "lamp-60", "lamp-200"]).watts).toBe(60);
});

test("with too small a lamp alone the advice says that pulsing may be the lamp", () => {
  const feed = firstFeed(["lamp-40"]);
  expect(feed.watts).toBe(40);
  expect(feed.advice).toContain("about 14 W");
  expect(feed.advice).toContain("too small");
});

test("no lamp is proposed that the bench does not have", () => {
  const feed = firstFeed(["bench-supply", "lamp-holder"]);
  expect(feed.feed).toBe("mains");
  expect(feed.watts).toBeNull();
  expect(lampsOf(["lamp-0", "lamp-x"])).toEqual([]);
});
