/** The page's only door to the engine: runs in a worker, so that the page never freezes. */
import type { EngineAnswer, EngineRequest } from "./engine-messages.ts";
import { FIXTURE } from "./fixture/bench-view.ts";

function answer(request: EngineRequest): unknown {
  if (request.ask === "view") return FIXTURE;
  throw new Error("practice is not wired yet");
}

addEventListener("message", (message: MessageEvent<EngineRequest>) => {
  const { askId } = message.data;
  let reply: EngineAnswer;
  try {
    reply = { askId, ok: true, answer: answer(message.data) };
  } catch (problem) {
    reply = { askId, ok: false, problem: problem instanceof Error ? problem.message : String(problem) };
  }
  postMessage(reply);
});
