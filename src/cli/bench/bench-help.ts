export const BENCH_HELP = `At the prompt:
  0.47  .47  470m  10k  4k7  22u   what the meter shows, in answer to the step proposed
  OL  beep  silent                 open, or what the continuity test does
  zero  junction  high  climbing   what the eye caught, where digits are not needed
  0.47 0.46 OL                     several at once: the check proposed and those after it with the same set-up
  done                             the step proposed is done (lift, replace, clean, unpower ...)
  clean burnt bulged cracked ...   what a look found
  quiet lamp-dim runs smoke ...    what happened at power-up
  measure diode PBUS NBUS 0.47     a reading of your own, in any order
  beside on    beside off          a good board beside it: after each reading the same is asked of it (skip: not this one)
  beside diode PBUS NBUS 0.47      a reading of the good board, in any order; compared: what both read
  look C1 bulged    lift Q1.c    refit Q1.c    remove C1    restore C1    replace Q1 4.20
  incoming Q1 diode e c 0.46       the part for Q1 between two of its pins, before it goes in: what the cold re-check is held against
  clip PBUS NBUS 1k    unclip PBUS NBUS 1k    clean logic    resolder U1    unpower
  power lamp 100 lamp-dim    power mains runs    power bench 15 0.5 V15 NBUS limiting
  quiet LED1=on K1=off             ... with signs of life: the light is lit, the relay did not click
  power mains load own runs        told to drive its own load (or load 250: a dummy of so many watts)
  unpower runs                     what it did under load until it was switched off
  mark R12 absent|different|unsure|as-drawn    how the part stands to the board file
  overrule proof WHY    overrule resistor WHY    go on without the proof; power with the resistor on
  overrule motor WHY               drive a motor whose windings and insulation have not been read
  turned M1    a motor or fan turned while plugged in, and charged the board
  note TEXT    overrule WHY    close repaired|not-economic|not-repairable|no-fault|declined
  quote repair accepted 120 150    what the customer said to an offer (repair, replace, decline): price, and the cap
  wait drying|part|answer WHAT     the job is put aside and costs no minutes; resume: taken up again
  { ... }                          any event as the job file spells it
  undo  undo 12                    the last event, or the one of that log line, counts as never done
  read                             with --meter: what the meter on the wire shows, once it is at rest
  ask  reveal                      with --practice: let the hidden board answer; show its faults
  next  others  stores  suspects  why PART  log  help  quit`;
