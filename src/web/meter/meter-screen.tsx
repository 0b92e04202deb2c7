/** Which meter is on the wire; with it on, what it shows, so that it can be tried before a board lies there. */
import { useEffect, useState } from "react";
import { said } from "../../messages/said.ts";
import {
  type DriverList,
  type MeterNow,
  type MeterSetting,
  parseScpiAddress,
  parseSigrokDriver,
} from "../../wire/meter-api.ts";
import { api } from "../api.ts";
import { SearchField } from "../bench/search-field.tsx";
import { Choices } from "../intake/choices.tsx";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { useMeter } from "../stream.ts";
import { displayed } from "../words.ts";

const KINDS = [
  { value: "none", words: said`None`, hint: said`readings are typed` },
  { value: "scpi", words: said`SCPI over the network`, hint: said`bench meters with a LAN socket` },
  { value: "sigrok", words: said`A meter that sigrok reads`, hint: said`hand-held meters with a cable` },
] as const;

export function MeterScreen() {
  const meter = useMeter();
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>{say`Meter on the wire`}</h1>
        <p>
          {say`With a meter connected to the bench computer, its reading stands beside each check and one tap takes it. Typing works just as well, at any time.`}
        </p>
      </header>
      <main className="meter-setting">
        {meter === null ? (
          <p className="sync" role="status">
            {say`The bench computer does not answer: the meter hangs on it.`}
          </p>
        ) : (
          <Setting key={JSON.stringify(meter.setting)} meter={meter} />
        )}
        <button type="button" className="tall" onClick={() => go("#/")}>
          {say`All jobs`}
        </button>
      </main>
    </div>
  );
}

function Setting({ meter }: { readonly meter: MeterNow }) {
  const { setting } = meter;
  const [kind, setKind] = useState<string>(setting.kind);
  const [problem, setProblem] = useState<string | null>(null);
  const put = (chosen: MeterSetting) =>
    api.setMeter(chosen).then(
      () => setProblem(null),
      (error: Error) => setProblem(error.message),
    );
  const give = (typed: ReturnType<typeof parseScpiAddress>) =>
    typed.ok ? void put(typed.value) : setProblem(typed.problem);
  return (
    <>
      <Choices
        title={say`The meter`}
        choices={KINDS.map(({ value, words, hint }) => ({ value, words: say(words), hint: say(hint) }))}
        value={kind}
        onValue={(chosen) => {
          setKind(chosen);
          setProblem(null);
          if (chosen === "none" && setting.kind !== "none") void put({ kind: "none" });
        }}
      />
      {kind === "scpi" && <ScpiForm setting={setting} onAddress={(text) => give(parseScpiAddress(text))} />}
      {kind === "sigrok" && (
        <SigrokForm
          setting={setting}
          onDriver={(driver, channel) => give(parseSigrokDriver(driver, channel))}
        />
      )}
      {problem !== null && (
        <p className="entry-problem" role="alert">
          {say(problem)}
        </p>
      )}
      {setting.kind !== "none" && kind === setting.kind && <Trial meter={meter} />}
    </>
  );
}

interface ScpiProps {
  readonly setting: MeterSetting;
  onAddress(text: string): void;
}

function ScpiForm({ setting, onAddress }: ScpiProps) {
  const [address, setAddress] = useState(setting.kind === "scpi" ? `${setting.host}:${setting.port}` : "");
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onAddress(address);
      }}
    >
      <label className="entry">
        {say`Its address`}
        <input
          autoComplete="off"
          autoCapitalize="off"
          placeholder="192.168.1.20"
          value={address}
          onChange={(event) => setAddress(event.target.value)}
        />
      </label>
      <p className="aside">
        {say`It stands in the meter's own menu, under LAN. The program sets the meter to each check's mode, but never to amps: its leads may lie on the board.`}
      </p>
      <button type="submit" className="primary tall" disabled={address.trim() === ""}>
        {say`Connect`}
      </button>
    </form>
  );
}

interface SigrokProps {
  readonly setting: MeterSetting;
  onDriver(driver: string, channel: string): void;
}

function SigrokForm({ setting, onDriver }: SigrokProps) {
  const own = setting.kind === "sigrok" ? setting : null;
  const [first = "", ...wire] = own?.driver.split(":") ?? [];
  const [driver, setDriver] = useState(first);
  const [options, setOptions] = useState(wire.join(":"));
  const [channel, setChannel] = useState(own?.channel ?? "");
  const [list, setList] = useState<DriverList>({ drivers: [], problem: null });
  useEffect(() => {
    api.meterDrivers().then(setList, (error: Error) => setList({ drivers: [], problem: error.message }));
  }, []);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDriver(options.trim() === "" ? driver : `${driver}:${options.trim()}`, channel);
      }}
    >
      {list.problem !== null && (
        <p className="problem" role="alert">
          {say(list.problem)}
        </p>
      )}
      <SearchField
        label={say`The meter's driver`}
        choices={list.drivers.map(({ name, words }) => ({ value: name, words }))}
        value={driver}
        onValue={setDriver}
      />
      <label className="entry">
        {say`Its wire, where the driver asks for one`}
        <input
          autoComplete="off"
          autoCapitalize="off"
          placeholder="conn=/dev/ttyUSB0"
          value={options}
          onChange={(event) => setOptions(event.target.value)}
        />
      </label>
      <label className="entry">
        {say`Its display, where it has several`}
        <input
          autoComplete="off"
          placeholder="P1"
          value={channel}
          onChange={(event) => setChannel(event.target.value)}
        />
      </label>
      <p className="aside">{say`Such a meter is turned to its mode by hand; a wrong one is said at the check.`}</p>
      <button type="submit" className="primary tall" disabled={driver.trim() === ""}>
        {say`Connect`}
      </button>
    </form>
  );
}

function trialWords({ name, trouble, shown }: MeterNow): string {
  if (trouble !== null) return say(trouble);
  return shown === null ? say`Waiting for it…` : say`${name ?? said`It`}, set to ${shown.reading.setTo}`;
}

/** What the meter shows now. */
function Trial({ meter }: { readonly meter: MeterNow }) {
  const { trouble, shown } = meter;
  const figure =
    shown === null
      ? "–"
      : typeof shown.reading.value === "number"
        ? displayed(shown.reading.value, shown.reading.unit)
        : shown.reading.value;
  return (
    <section className="on-the-wire" data-bad={trouble !== null} aria-label={say`What it shows`}>
      <p className="figure wire-figure">{figure}</p>
      <p className="wire-words" role="status">
        {trialWords(meter)}
      </p>
    </section>
  );
}
