import { type Command, InvalidArgumentError } from "commander";
import { DONE, type Finish, type Io, refuse } from "../io.ts";

interface ServeOptions {
  readonly port?: number;
  readonly data?: string;
  readonly open?: true;
  readonly lan?: true;
}

export function addServe(program: Command, io: Io, finish: Finish): void {
  program
    .command("serve")
    .description("serve the bench page, on this machine alone unless told otherwise, until Ctrl-C")
    .option("--port <port>", "the port (default: 4517, or the next free one; 0: any free one)", parsePort)
    .option(
      "--data <folder>",
      "where jobs are kept (default: FAULTWRIGHT_DATA, else ~/.local/share/faultwright)",
    )
    .option("--open", "open the page in the browser")
    .option("--lan", "let phones and laptops of this network in, by http and https; prints how")
    .addHelpText("after", "\nExample:\n  $ faultwright serve --open")
    .action((options: ServeOptions) => finish(() => serve(options, io)));
}

async function serve(options: ServeOptions, io: Io): Promise<number> {
  // Loaded here only: the other commands need neither the database nor the shipped boards.
  const { start } = await import("../../server/main.ts");
  try {
    const server = await start({
      ...(options.port === undefined ? {} : { port: options.port }),
      ...(options.data === undefined ? {} : { dataDir: options.data }),
      open: options.open === true,
      lan: options.lan === true,
    });
    io.out(`Faultwright is ready: ${server.url}\nJobs are kept in ${server.dataDir}\n${server.lanWords}`);
    await io.untilStopped();
    await server.stop();
    return DONE;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EADDRINUSE")
      return refuse(io, `--port: ${options.port} is taken; leave it out for a free one`);
    if (code === "EACCES") return refuse(io, `you may not use this port or data folder: ${String(error)}`);
    throw error;
  }
}

function parsePort(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65535)
    throw new InvalidArgumentError("a port is a whole number from 0 to 65535");
  return port;
}
