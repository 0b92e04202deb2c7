/**
 * A SCPI instrument over TCP. One question at a time, each with its time; whatever goes wrong on the wire ends the connection and begins a
 * new one, so that a late answer is never taken for that of a later question.
 */

import { connect, type Socket } from "node:net";
import type { InstrumentReading, WantedReading } from "../instrument/instrument-reading.ts";
import { functionIn, headerFor, SCPI_FUNCTIONS } from "../instrument/scpi/scpi-functions.ts";
import {
  LineSplitter,
  parseIdentity,
  parseScpiError,
  parseScpiReading,
} from "../instrument/scpi/scpi-text.ts";
import { said } from "../messages/said.ts";
import type { MeterSource, Told } from "./meter-source.ts";
import { type Pace, USUAL_PACE } from "./pace.ts";

interface Address {
  readonly host: string;
  readonly port: number;
}

/** The wire failed: said to the person, then tried again. */
class WireFault extends Error {}

export class ScpiSocket implements MeterSource {
  readonly #address: Address;
  readonly #told: Told;
  readonly #pace: Pace;
  #wanted: WantedReading | null = null;
  #stopped = false;
  #socket: Socket | null = null;
  #wake: (() => void) | null = null;

  constructor(address: Address, told: Told, pace: Pace = USUAL_PACE) {
    this.#address = address;
    this.#told = told;
    this.#pace = pace;
    void this.#run();
  }

  want(wanted: WantedReading): void {
    this.#wanted = wanted;
  }

  stop(): void {
    this.#stopped = true;
    this.#socket?.destroy();
    this.#wake?.();
  }

  async #run(): Promise<void> {
    while (!this.#stopped) {
      try {
        await this.#talk();
      } catch (error) {
        if (this.#stopped) return;
        this.#told.trouble(error instanceof WireFault ? error.message : String(error));
      }
      this.#socket?.destroy();
      await this.#rest(this.#pace.againMs);
    }
  }

  /** One connection, until it fails or is not wanted any more. */
  async #talk(): Promise<void> {
    const ask = await this.#connected();
    const name = parseIdentity(await ask("*IDN?"));
    if (name === null) throw new WireFault(said`What answers at ${this.#where()} is no SCPI instrument.`);
    this.#told.named(name);
    await ask("*CLS", false);
    const meter: Conversation = { set: null, refusedFor: null, says: await this.#probed(ask), garbage: 0 };
    while (!this.#stopped) {
      await this.#measureOnce(ask, meter);
      await this.#rest(this.#pace.betweenMs);
    }
  }

  /**
   * The question that it answers with its function. A question it does not know goes unanswered: what comes then is the answer of the next
   * one, about its errors.
   */
  async #probed(ask: Ask): Promise<Conversation["says"]> {
    for (const says of ["FUNC?", "CONF?"] as const) {
      await ask(says, false);
      if (parseScpiError(await ask("SYST:ERR?")) === null) {
        await ask(null);
        return says;
      }
      await ask("*CLS", false);
    }
    return null;
  }

  async #measureOnce(ask: Ask, meter: Conversation): Promise<void> {
    const wanted = this.#wanted;
    const header = wanted === null ? null : headerFor(wanted);
    // Only when the check changes: somebody who turns the meter by hand has a reason, and is told instead of overruled.
    if (header !== null && header !== meter.set) await this.#setTo(header, ask, meter);
    if (header !== null && meter.refusedFor === header) return;
    const value = parseScpiReading(await ask("READ?"));
    if (value === null) {
      meter.garbage++;
      if (meter.garbage >= this.#pace.garbageBorne)
        throw new WireFault(said`${this.#where()} answers no figures; connecting again.`);
      this.#told.trouble(said`The meter's last answer was no figure; asking again.`);
      return;
    }
    meter.garbage = 0;
    const shown = await this.#setNow(ask, meter);
    this.#told.trouble(null);
    this.#told.reading({
      modes: shown.modes,
      setTo: shown.setTo,
      unit: shown.unit,
      value,
      doubt: null,
    });
  }

  /** Sets the function and asks the error queue whether the meter has it. */
  async #setTo(header: string, ask: Ask, meter: Conversation): Promise<void> {
    await ask(`CONF:${header}`, false);
    meter.set = header;
    meter.refusedFor = null;
    for (let read = 0; read < 20; read++) {
      const error = parseScpiError(await ask("SYST:ERR?"));
      if (error === null) throw new WireFault(said`${this.#where()} does not answer for its errors.`);
      if (error.code === 0) return;
      if (meter.refusedFor === null) {
        meter.refusedFor = header;
        const what = SCPI_FUNCTIONS.find((row) => row.header === header)?.setTo ?? header;
        this.#told.trouble(
          said`The meter has no ${what} (it says: ${error.code} ${error.words}). Type this one.`,
        );
      }
    }
  }

  /** What it is set to now, as it says itself; as it was set where it cannot say. */
  async #setNow(ask: Ask, meter: Conversation): Promise<Pick<InstrumentReading, "modes" | "setTo" | "unit">> {
    if (meter.says !== null) {
      const answer = await ask(meter.says);
      return functionIn(answer) ?? { modes: [], setTo: answer.replace(/"/g, "").slice(0, 40), unit: "" };
    }
    const set = SCPI_FUNCTIONS.find((row) => row.header === meter.set);
    return set ?? { modes: [], setTo: said`a function that it does not name`, unit: "" };
  }

  #where(): string {
    return `${this.#address.host}:${this.#address.port}`;
  }

  #rest(milliseconds: number): Promise<void> {
    if (this.#stopped) return Promise.resolve();
    return new Promise((resolve) => {
      const timer = setTimeout(resolve, milliseconds);
      this.#wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  }

  async #connected(): Promise<Ask> {
    const { host, port } = this.#address;
    const socket = connect({ host: host.replace(/^\[|\]$/g, ""), port });
    this.#socket = socket;
    socket.setNoDelay(true);
    socket.setEncoding("latin1");
    const wire = new Wire(socket, this.#where());
    await wire.opened(this.#pace.patienceMs);
    return async (question, answered = true) => {
      if (question !== null) socket.write(`${question}\n`);
      return answered ? wire.line(this.#pace.patienceMs, question ?? "") : "";
    };
  }
}

/** Sends a question (null: nothing) and waits for the next line, unless none is awaited. */
type Ask = (question: string | null, answered?: boolean) => Promise<string>;

/** How far one connection has come. */
interface Conversation {
  /** what it was set to for the check at hand */
  set: string | null;
  /** a function that it has not */
  refusedFor: string | null;
  /** the question that it answers with its function; null where it answers none */
  readonly says: "FUNC?" | "CONF?" | null;
  garbage: number;
}

/** The lines of one connection, one waiter at a time. */
class Wire {
  readonly #socket: Socket;
  readonly #where: string;
  readonly #splitter = new LineSplitter();
  readonly #lines: string[] = [];
  #fault: WireFault | null = null;
  #waiter: (() => void) | null = null;
  #open = false;

  constructor(socket: Socket, where: string) {
    this.#socket = socket;
    this.#where = where;
    socket.on("connect", () => {
      this.#open = true;
      this.#waiter?.();
    });
    socket.on("data", (piece: string) => {
      const lines = this.#splitter.take(piece);
      if (lines === null) this.#fail(said`${where} sends no lines: is it a SCPI instrument?`);
      else this.#lines.push(...lines);
      this.#waiter?.();
    });
    socket.on("error", (error: NodeJS.ErrnoException) =>
      this.#fail(
        said`No meter at ${where} (${error.code ?? error.message}): is it on, is the address right?`,
      ),
    );
    socket.on("close", () => this.#fail(said`The wire to ${where} was cut.`));
  }

  async opened(patienceMs: number): Promise<void> {
    await this.#until(() => this.#open, patienceMs, said`Nothing answers at ${this.#where}.`);
  }

  async line(patienceMs: number, question: string): Promise<string> {
    const seconds = Math.round(patienceMs / 1000);
    const slow = said`The meter did not answer ${question} within ${seconds} s; connecting again.`;
    await this.#until(() => this.#lines.length > 0, patienceMs, slow);
    return this.#lines.shift() ?? "";
  }

  #fail(problem: string): void {
    this.#fault ??= new WireFault(problem);
    this.#waiter?.();
  }

  async #until(there: () => boolean, patienceMs: number, late: string): Promise<void> {
    const end = Date.now() + patienceMs;
    while (!there()) {
      if (this.#fault !== null) throw this.#fault;
      const left = end - Date.now();
      if (left <= 0) throw new WireFault(late);
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, left);
        this.#waiter = () => {
          clearTimeout(timer);
          resolve();
        };
      });
      this.#waiter = null;
    }
    if (this.#fault !== null && this.#socket.destroyed) throw this.#fault;
  }
}
