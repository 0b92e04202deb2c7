import { type Command, InvalidArgumentError } from "commander";
import type { MeasureMode } from "../../bench/event.ts";
import { MEASURE_MODES } from "../../bench/words.ts";
import { BenchMeter } from "../../hookup/bench-meter.ts";
import { sigrokDrivers } from "../../hookup/sigrok-process.ts";
import type { MeterNow } from "../../instrument/meter-now.ts";
import { parseMeterWord } from "../../instrument/meter-setting.ts";
import { formatQuantity } from "../../units/quantity.ts";
import { table } from "../answer-text.ts";
import { DONE, type Finish, type Io, oneLine, refuse } from "../io.ts";

const USUAL_SECONDS = 5;

interface TryOptions {
  readonly mode?: MeasureMode;
  readonly seconds: number;
}

export function addMeter(program: Command, io: Io, finish: Finish): void {
  const meter = program
    .command("meter")
    .description("a meter on the wire: which this machine can read, and what one shows")
    .addHelpText(
      "after",
      `
Examples:
  $ faultwright meter list
  $ faultwright meter try scpi:192.168.1.20:5025 --mode diode
  $ faultwright meter try sigrok:scpi-dmm:conn=/dev/ttyUSB0
  $ faultwright bench job.json --meter scpi:192.168.1.20    then \`read\` at the prompt`,
    );
  meter
    .command("list")
    .description("the drivers of this machine's sigrok-cli")
    .action(() => finish(() => list(io)));
  meter
    .command("try")
    .description("show what a meter reads, for some seconds")
    .argument("<meter>", "scpi:HOST:PORT or sigrok:DRIVER")
    .option("--mode <mode>", `set a SCPI meter to this: ${MEASURE_MODES.join(" ")}`, parseMode)
    .option("--seconds <seconds>", "for how long", parseSeconds, USUAL_SECONDS)
    .action((word: string, options: TryOptions) => finish(() => tryMeter(word, options, io)));
}

async function list(io: Io): Promise<number> {
  const drivers = await sigrokDrivers();
  if (!drivers.ok) return refuse(io, drivers.problem);
  io.out(table(drivers.value.map(({ name, words }) => [`  ${name}`, words])));
  return DONE;
}

/** Exit code 2 where no figure came. */
async function tryMeter(word: string, { mode, seconds }: TryOptions, io: Io): Promise<number> {
  const setting = parseMeterWord(word);
  if (!setting.ok) return refuse(io, setting.problem);
  const meter = new BenchMeter({ read: () => setting.value, write: () => undefined });
  if (mode !== undefined) meter.want({ mode });
  let last: MeterNow | null = null;
  let figures = 0;
  meter.watch((now) => {
    if (now.trouble !== null && now.trouble !== last?.trouble) io.err(`${oneLine(now.trouble)}\n`);
    if (now.name !== null && last?.name !== now.name) io.out(`${now.name}\n`);
    if (now.shown !== null && now.shown !== last?.shown) {
      figures++;
      io.out(`${shownText(now.shown)}\n`);
    }
    last = now;
  });
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, seconds * 1000);
  });
  await Promise.race([over, io.untilStopped()]);
  clearTimeout(timer);
  meter.stop();
  return figures > 0 ? DONE : refuse(io, `${word}: no figure came in ${seconds} s`);
}

function shownText({ reading, settling }: NonNullable<MeterNow["shown"]>): string {
  const figure =
    typeof reading.value === "number" ? formatQuantity(reading.value, reading.unit) : reading.value;
  const rest = { moving: "moving", settled: "at rest", climbing: "still climbing" }[settling.state];
  return `${figure.padStart(12)}  ${reading.setTo}, ${rest}`;
}

function parseMode(text: string): MeasureMode {
  const mode = MEASURE_MODES.find((known) => known === text);
  if (mode === undefined) throw new InvalidArgumentError(`a mode is one of ${MEASURE_MODES.join(" ")}`);
  return mode;
}

function parseSeconds(text: string): number {
  const seconds = Number(text);
  if (!(seconds > 0 && seconds <= 3600)) throw new InvalidArgumentError("from above 0 to 3600");
  return seconds;
}
