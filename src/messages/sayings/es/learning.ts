import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "Todos los fallos juntos",
  "on a board that comes in": "en una placa que llega",
  "the tables and all faults together lead to expect": "hacen esperar las tablas y todas las fallas juntas",
  "what it is known by, whatever its name": "por qué se la conoce, se llame como se llame",
  "which logs that was taken from": "de qué registros se tomó",
  "expected 1 to {0} letters": "se esperaban de 1 a {0} letras",
};
