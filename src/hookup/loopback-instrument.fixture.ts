/** A SCPI multimeter on the loopback address that answers, and misbehaves, as it is told. */

import type { AddressInfo } from "node:net";
import { createServer, type Server, type Socket } from "node:net";

export interface Manners {
  /** the answers to `READ?`, one after another, the last for good; null: none at all */
  figures: readonly (string | null)[];
  /** milliseconds before each answer */
  slowMs: number;
  /** sends each answer in pieces of so many characters; 0: in one */
  pieces: number;
  /** what it says it is set to, whatever it was told; null: what it was told */
  turnedTo: string | null;
  /** functions that it has not */
  lacks: readonly string[];
  /** knows no `FUNC?` */
  mute: boolean;
  /** cuts the wire at the next `READ?` */
  cut: boolean;
}

const GOOD: Manners = {
  figures: ["+4.71230000E-01"],
  slowMs: 0,
  pieces: 0,
  turnedTo: null,
  lacks: [],
  mute: false,
  cut: false,
};

export class LoopbackInstrument {
  readonly manners: Manners;
  /** every line that it was sent */
  readonly heard: string[] = [];
  readonly #server: Server;
  readonly #sockets = new Set<Socket>();
  #errors: string[] = [];
  #function = "VOLT";
  #next = 0;

  private constructor(manners: Partial<Manners>) {
    this.manners = { ...GOOD, ...manners };
    this.#server = createServer((socket) => {
      this.#sockets.add(socket);
      socket.on("close", () => this.#sockets.delete(socket));
      socket.on("error", () => undefined);
      let rest = "";
      socket.on("data", (piece) => {
        const lines = (rest + piece.toString("latin1")).split("\n");
        rest = lines.pop() ?? "";
        for (const line of lines) void this.#answer(socket, line.trim());
      });
    });
  }

  static async start(manners: Partial<Manners> = {}): Promise<LoopbackInstrument> {
    const instrument = new LoopbackInstrument(manners);
    await new Promise<void>((resolve) => instrument.#server.listen(0, "127.0.0.1", resolve));
    return instrument;
  }

  get address() {
    return { host: "127.0.0.1", port: (this.#server.address() as AddressInfo).port };
  }

  /** From now on it shows these. */
  show(...figures: readonly string[]): void {
    this.manners.figures = figures;
    this.#next = 0;
  }

  async stop(): Promise<void> {
    for (const socket of this.#sockets) socket.destroy();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  async #answer(socket: Socket, line: string): Promise<void> {
    this.heard.push(line);
    const { manners } = this;
    if (line === "READ?" && manners.cut) {
      manners.cut = false;
      socket.write("+4.7");
      socket.destroy();
      return;
    }
    const answer = this.#answerTo(line);
    if (answer === null) return;
    if (manners.slowMs > 0) await new Promise((resolve) => setTimeout(resolve, manners.slowMs));
    const text = `${answer}\r\n`;
    const step = manners.pieces === 0 ? text.length : manners.pieces;
    for (let at = 0; at < text.length; at += step) {
      if (socket.destroyed) return;
      socket.write(text.slice(at, at + step), "latin1");
      if (manners.pieces > 0) await new Promise((resolve) => setTimeout(resolve, 5));
    }
  }

  #answerTo(line: string): string | null {
    const { manners } = this;
    if (line === "*IDN?") return "LOOPBACK INSTRUMENTS,DM-1,000123,1.0";
    if (line === "SYST:ERR?") return this.#errors.shift() ?? '+0,"No error"';
    if (line === "*CLS") this.#errors = [];
    else if (line.startsWith("CONF:")) {
      const name = line.slice("CONF:".length);
      if (manners.lacks.includes(name)) this.#errors.push('-113,"Undefined header"');
      else this.#function = name;
    } else if (line === "FUNC?" && !manners.mute) return `"${manners.turnedTo ?? this.#function}"`;
    else if (line === "READ?") {
      const figure = manners.figures[Math.min(this.#next++, manners.figures.length - 1)];
      return figure ?? null;
    } else this.#errors.push('-113,"Undefined header"');
    return null;
  }
}
