/** This bench: what it is equipped with, what its keys and pedals do, its voice and its screen. */
import { useEffect, useState } from "react";
import { LANGUAGES } from "../../messages/language.ts";
import { said } from "../../messages/said.ts";
import { go } from "../route.ts";
import { chooseLanguage, language, say } from "../say.ts";
import { useKeptAwakeBy, useWakeLock } from "../wake-lock.ts";
import { benchEquipment, keepBenchEquipment } from "./bench-equipment.ts";
import { COMMANDS, mayBeMapped } from "./commands.ts";
import { EquipmentKeys } from "./equipment-keys.tsx";
import { changeHandsSettings, useHandsSettings } from "./hands-settings.ts";
import { canSpeak, sayAloud } from "./voice.ts";

export function ThisBenchScreen() {
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>{say`This bench`}</h1>
        <p>{say`Said once. Jobs that are open keep what they began with.`}</p>
      </header>
      <main className="this-bench">
        <LanguageChoice />
        <Equipment />
        <MappedKeys />
        <Voice />
        <Screen />
        <button type="button" className="primary tall" onClick={() => go("#/")}>
          {say`All jobs`}
        </button>
      </main>
    </div>
  );
}

function LanguageChoice() {
  return (
    <section aria-labelledby="language-title">
      <h2 id="language-title">{say`Language`}</h2>
      <div className="keys">
        {LANGUAGES.map(({ language: one, name }) => (
          <button
            key={one}
            type="button"
            lang={one}
            aria-pressed={one === language()}
            onClick={() => void chooseLanguage(one)}
          >
            {name}
          </button>
        ))}
      </div>
    </section>
  );
}

function Equipment() {
  const [equipment, setEquipment] = useState<ReadonlySet<string> | null>(null);
  const [unkept, setUnkept] = useState<string | null>(null);
  useEffect(() => void benchEquipment().then((kept) => setEquipment(new Set(kept ?? []))), []);
  if (equipment === null) return null;
  return (
    <section aria-labelledby="equipment-title">
      <h2 id="equipment-title">{say`Beside a meter and an iron`}</h2>
      <p className="aside">
        {say`Only what is marked here is ever proposed. One meter alone gets a full way through.`}
      </p>
      <EquipmentKeys
        equipment={equipment}
        onEquipment={(next) => {
          setEquipment(next);
          keepBenchEquipment(next).then(
            () => setUnkept(null),
            (error: Error) => setUnkept(say`This browser keeps nothing (${error.message}).`),
          );
        }}
      />
      {unkept !== null && (
        <p className="entry-problem" role="alert">
          {unkept}
        </p>
      )}
    </section>
  );
}

/** Waits for the next key while one is asked for, and gives it the command. */
function useNextKey() {
  const { keys } = useHandsSettings();
  const [asking, setAsking] = useState<string | null>(null);
  const [told, setTold] = useState("");
  useEffect(() => {
    if (asking === null) return;
    const pressed = (event: KeyboardEvent) => {
      event.preventDefault();
      setAsking(null);
      if (event.key === "Escape") return setTold(say`Left as it was.`);
      if (!mayBeMapped(event.key))
        return setTold(
          say`${event.key === " " ? said`The space bar` : event.key} has its own work in a browser. Try another.`,
        );
      changeHandsSettings({ keys: { ...keys, [event.key]: asking } });
      setTold(say`${event.key} is set.`);
    };
    addEventListener("keydown", pressed, { capture: true });
    return () => removeEventListener("keydown", pressed, { capture: true });
  }, [asking, keys]);
  return { asking, setAsking, told, setTold };
}

function MappedKeys() {
  const { keys } = useHandsSettings();
  const { asking, setAsking, told, setTold } = useNextKey();
  const forget = (key: string) => {
    changeHandsSettings({
      keys: Object.fromEntries(Object.entries(keys).filter(([other]) => other !== key)),
    });
    setTold(say`${key} is free again.`);
  };
  return (
    <section aria-labelledby="keys-title">
      <h2 id="keys-title">{say`Foot pedal, clicker, any key`}</h2>
      <p className="aside">
        {say`Whatever works as a keyboard will do. Tap Set, then press the pedal. Kept in this browser.`}
      </p>
      <ul className="mapped-keys">
        {COMMANDS.map(({ name, words }) => (
          <li key={name}>
            <span>{say(words)}</span>
            <button
              type="button"
              className="small"
              aria-label={say`Set a key: ${words}`}
              aria-pressed={asking === name}
              onClick={() => {
                setAsking(asking === name ? null : name);
                setTold("");
              }}
            >
              {asking === name ? say`Press it now` : say`Set`}
            </button>
            <span className="mapped">
              {Object.entries(keys)
                .filter(([, command]) => command === name)
                .map(([key]) => (
                  <button
                    type="button"
                    className="small"
                    key={key}
                    aria-label={say`Forget ${key}: ${words}`}
                    onClick={() => forget(key)}
                  >
                    <kbd>{key}</kbd> ×
                  </button>
                ))}
            </span>
          </li>
        ))}
      </ul>
      <p className="aside" role="status">
        {asking === null ? told : say`Waiting for a key; Escape leaves it as it was.`}
      </p>
    </section>
  );
}

function Voice() {
  const { speaks } = useHandsSettings();
  const able = canSpeak();
  return (
    <section aria-labelledby="voice-title">
      <h2 id="voice-title">{say`Voice`}</h2>
      <label className="tick">
        <input
          type="checkbox"
          checked={speaks}
          disabled={!able}
          onChange={(event) => {
            changeHandsSettings({ speaks: event.target.checked });
            if (event.target.checked) sayAloud(say`Each step is said when it comes up.`);
          }}
        />
        {say`Say each step aloud`}
      </label>
      {!able && <p className="aside">{say`This browser has no voice.`}</p>}
    </section>
  );
}

function Screen() {
  const { staysAwake } = useHandsSettings();
  useWakeLock();
  const by = useKeptAwakeBy();
  return (
    <section aria-labelledby="screen-title">
      <h2 id="screen-title">{say`Screen`}</h2>
      <label className="tick">
        <input
          type="checkbox"
          checked={staysAwake}
          onChange={(event) => changeHandsSettings({ staysAwake: event.target.checked })}
        />
        {say`Keep it on while a job is open`}
      </label>
      <p className="aside" role="status">
        {staysAwake ? say(AWAKE_WORDS[by ?? "not"]) : ""}
      </p>
    </section>
  );
}

const AWAKE_WORDS = {
  lock: said`It stays on by the browser's wake lock.`,
  picture: said`The browser gives no wake lock here; a moving picture behind the page keeps it on, which takes a little more of the battery.`,
  not: said`This browser keeps no screen on: set the phone itself to stay awake.`,
} as const;
