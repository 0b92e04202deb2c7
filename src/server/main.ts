/** The server as the program ships it, with the boards that come with it. */
import { SHIPPED } from "../shipped/shipped.ts";
import { type RunningServer, type StartOptions, startServer } from "./start-server.ts";

/** Rejects with `code: "EADDRINUSE"` where the port asked for is taken. */
export function start(options: StartOptions = {}): Promise<RunningServer> {
  return startServer(options, SHIPPED);
}
