/** `npm start`: set up, build what changed, serve the bench on this machine, print its address. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { build } from "./build.mjs";
import { checkNode, installPackages, ROOT, runScript, SetupError } from "./setup.mjs";

const PARENT_WATCH_MS = 250;
/** Read before anything else: by the time the server listens, whoever started us may be gone. */
const STARTED_BY = process.ppid;

function readArguments() {
  const { values } = parseArgs({
    options: {
      port: { type: "string" },
      data: { type: "string" },
      open: { type: "boolean", default: false },
      lan: { type: "boolean", default: false },
    },
  });
  const asked = values.port ?? process.env.PORT;
  const port = asked === undefined ? undefined : Number(asked);
  if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port <= 65535)) {
    throw new SetupError(`--port ${asked}: a port is a whole number from 0 (any free one) to 65535.`);
  }
  return { port, dataDir: values.data, open: values.open, lan: values.lan };
}

/**
 * npm starts us through a shell, and a signal sent to npm alone never arrives here. When our parent has gone we
 * belong to somebody else, and that is the sign to stop.
 */
function stopWith(server) {
  let stopping = false;
  const stop = async () => {
    if (stopping) return;
    stopping = true;
    // An open connection must not keep a server alive that was told to go.
    setTimeout(() => process.exit(0), 2000).unref();
    await server.stop();
    process.exit(0);
  };
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, stop);
  setInterval(() => {
    if (process.ppid !== STARTED_BY) void stop();
  }, PARENT_WATCH_MS).unref();
}

async function startServer(options) {
  const { start } = await import(pathToFileURL(join(ROOT, "dist", "server.mjs")).href);
  try {
    return await start(options);
  } catch (error) {
    if (error?.code !== "EADDRINUSE") throw error;
    throw new SetupError(`Port ${options.port} is taken. Give another one, or 0 for any free one.`);
  }
}

await runScript(async () => {
  checkNode();
  const options = readArguments();
  if (existsSync(join(ROOT, "src"))) {
    await installPackages();
    await build();
  }
  const server = await startServer(options);
  stopWith(server);
  process.stdout.write(
    `Faultwright is ready: ${server.url}\nJobs are kept in ${server.dataDir}\n${server.lanWords}`,
  );
});
