/** The one meter of this bench: its setting, its wire, and what it shows now, for whoever looks on. */
import type { WantedReading } from "../instrument/instrument-reading.ts";
import type { MeterNow } from "../instrument/meter-now.ts";
import type { MeterSetting } from "../instrument/meter-setting.ts";
import { SettlingWatch } from "../instrument/settling.ts";
import type { MeterSource, Told } from "./meter-source.ts";
import type { Pace } from "./pace.ts";
import { ScpiSocket } from "./scpi-socket.ts";
import { SigrokProcess } from "./sigrok-process.ts";

type Onlooker = (now: MeterNow) => void;

/** Where the setting is kept from one start to the next. */
export interface KeepsSetting {
  read(): MeterSetting;
  write(setting: MeterSetting): void;
}

/** Without an onlooker the wire is let go of, after this long: a page that is reloaded finds it still there. */
const LINGER_MS = 3_000;
const NOTHING = { name: null, trouble: null, shown: null } as const;

export class BenchMeter {
  readonly #keeper: KeepsSetting;
  readonly #pace: Pace | undefined;
  readonly #onlookers = new Set<Onlooker>();
  #now: MeterNow;
  #source: MeterSource | null = null;
  #wanted: WantedReading | null = null;
  #leaving: NodeJS.Timeout | null = null;

  constructor(keeper: KeepsSetting, pace?: Pace) {
    this.#keeper = keeper;
    this.#pace = pace;
    this.#now = { setting: keeper.read(), ...NOTHING };
  }

  get now(): MeterNow {
    return this.#now;
  }

  set(setting: MeterSetting): void {
    this.#keeper.write(setting);
    this.#disconnect();
    this.#tell({ setting, ...NOTHING });
    if (this.#onlookers.size > 0) this.#connect();
  }

  /** What the card at hand is to be answered with; the last page that asked is heard. */
  want(wanted: WantedReading): void {
    this.#wanted = wanted;
    this.#source?.want(wanted);
  }

  /** Is told of every change, and at once how things stand; the returned function ends it. */
  watch(onlooker: Onlooker): () => void {
    this.#onlookers.add(onlooker);
    if (this.#leaving !== null) clearTimeout(this.#leaving);
    this.#leaving = null;
    if (this.#source === null) this.#connect();
    onlooker(this.#now);
    return () => {
      this.#onlookers.delete(onlooker);
      if (this.#onlookers.size > 0 || this.#leaving !== null) return;
      this.#leaving = setTimeout(() => this.#disconnect(), LINGER_MS);
      this.#leaving.unref();
    };
  }

  stop(): void {
    this.#onlookers.clear();
    this.#disconnect();
  }

  #connect(): void {
    const { setting } = this.#now;
    const told = this.#listen();
    if (setting.kind === "scpi") this.#source = new ScpiSocket(setting, told, this.#pace);
    else if (setting.kind === "sigrok") this.#source = new SigrokProcess(setting, told, this.#pace);
    if (this.#wanted !== null) this.#source?.want(this.#wanted);
  }

  #disconnect(): void {
    if (this.#leaving !== null) clearTimeout(this.#leaving);
    this.#leaving = null;
    this.#source?.stop();
    this.#source = null;
    this.#now = { setting: this.#now.setting, ...NOTHING };
  }

  /** What a source tells, as long as it is the one on the wire. */
  #listen(): Told {
    const watch = new SettlingWatch();
    const { setting } = this.#now;
    const begun = performance.now();
    const mine = () => this.#now.setting === setting;
    return {
      named: (name) => {
        if (mine() && this.#now.name !== name) this.#tell({ ...this.#now, name });
      },
      trouble: (trouble) => {
        if (!mine() || this.#now.trouble === trouble) return;
        this.#tell({ ...this.#now, trouble, ...(trouble === null ? {} : { shown: null }) });
      },
      reading: (reading) => {
        if (!mine()) return;
        const settling = watch.take(reading, (performance.now() - begun) / 1000);
        this.#tell({ ...this.#now, shown: { reading, settling, touch: watch.touches } });
      },
    };
  }

  #tell(now: MeterNow): void {
    this.#now = now;
    for (const onlooker of this.#onlookers) onlooker(now);
  }
}
