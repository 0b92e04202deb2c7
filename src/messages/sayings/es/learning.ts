import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "Todos los fallos juntos",
  "on a board that comes in": "en una placa que llega",
  "the tables and all faults together lead to expect": "hacen esperar las tablas y todas las fallas juntas",
  "which logs that was taken from": "de qué registros se tomó",
  "expected 1 to {0} letters": "se esperaban de 1 a {0} letras",
};
