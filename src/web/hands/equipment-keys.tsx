/** The list of what a bench may have beside a meter: one tap each. */
import { EQUIPMENT } from "../intake/intake.ts";
import { say } from "../say.ts";

interface Props {
  readonly equipment: ReadonlySet<string>;
  onEquipment(equipment: ReadonlySet<string>): void;
}

export function EquipmentKeys({ equipment, onEquipment }: Props) {
  const toggle = (name: string) => {
    const next = new Set(equipment);
    if (!next.delete(name)) next.add(name);
    onEquipment(next);
  };
  return (
    <fieldset className="keys" aria-label={say`On this bench beside a meter`}>
      {EQUIPMENT.map(({ name, words }) => (
        <button type="button" key={name} aria-pressed={equipment.has(name)} onClick={() => toggle(name)}>
          {say(words)}
        </button>
      ))}
    </fieldset>
  );
}
