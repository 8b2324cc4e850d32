/** The state of the page, made from the core's own types: what the core fills in may be absent, and a number may stand bare. */

import type * as Core from "./core.d.ts";

/** A number as the page holds it: bare where it is exact, else with its ± and how it is known. */
export type Held = number | Core.Quantity;

/** The same with every quantity as the page holds it. */
type AsHeld<T> = T extends Core.Quantity
  ? Held
  : T extends readonly (infer One)[]
    ? AsHeld<One>[]
    : T extends object
      ? { [Key in keyof T]: AsHeld<T[Key]> }
      : T;

/** The same, where all but these keys may be absent. */
type Sparse<T, Needed extends keyof T> = Partial<AsHeld<Omit<T, Needed>>> & AsHeld<Pick<T, Needed>>;

export type Power = Sparse<Core.Power, "cp_w" | "w_prime_j">;
export type Lapse = Sparse<Core.Lapse, "share" | "cda_m2">;
export type Equipment = Omit<Sparse<Core.Equipment, never>, "lapses"> & { lapses?: Lapse[] };
export type Position = Omit<Sparse<Core.Position, "name" | "cda_m2">, "power" | "lapses" | "equipment"> & {
  power?: Power;
  lapses?: Lapse[];
  equipment?: Equipment[];
};
export type Effort = AsHeld<Core.Effort>;
export type Course = Sparse<Core.Course, "kind">;
export type Event = Omit<Core.Event, "course"> & { course?: Course };
export type Conditions = Sparse<Core.Conditions, "wind_speed_m_s">;

export type Scenario = {
  fasterby?: number;
  title?: string;
  rider: AsHeld<Core.Rider>;
  bike: Sparse<Core.Bike, never>;
  positions: Position[];
  riding_position: number;
  power: Power;
  efforts?: Effort[];
  events: Event[];
  course: Course;
  conditions: Conditions;
  start: AsHeld<Core.StartForm>;
  stops?: AsHeld<Core.Stops>;
  feeding?: AsHeld<Core.Feeding>;
  model_error_share: Held;
};

/** A lap, a run and a coast-down of a drag test as the page holds them. */
export type LapForm = Sparse<Core.LapForm, "from_s" | "to_s">;
export type RunForm = Sparse<Core.RunForm, "speed_m_s" | "power_w">;
export type CoastDownForm = Sparse<Core.CoastDownForm, "from_m_s" | "to_m_s">;

export type EffortForm = AsHeld<Core.EffortForm>;

/** What each question keeps of its own, by its id. */
export type Details = {
  "speed-for-watts": { by: string } & Sparse<Core.SpeedForWattsWith, never>;
  "power-or-drag": Sparse<Core.PowerOrDragWith, "power_change" | "cda_change" | "effort">;
  "hold-or-fade": Sparse<Core.HoldOrFadeWith, "low" | "steady" | "effort">;
  "power-curve": Sparse<Core.PowerCurveWith, "hold_s" | "power_change">;
  "drag-test": Omit<Sparse<Core.DragTestWith, "rolling" | "wind">, "recordings" | "laps" | "runs" | "coast_downs" | "film" | "plan" | "rules"> & {
    rides: string[];
    laps: LapForm[];
    runs: RunForm[];
    coast_downs?: CoastDownForm[];
    film: Core.FilmForm[];
    plan: Core.PlanForm;
    rules?: Partial<Core.RulesForm>;
  };
  "leg-room": Sparse<Core.LegRoomWith, "model" | "a" | "b" | "stature_m">;
  "which-position": Sparse<Core.WhichPositionWith, "cda_correlation"> & { reference: number };
  "next-gain": Sparse<Core.NextGainWith, "money" | "hours_per_week" | "weeks" | "times_ridden"> & { currency?: string };
  "finish-time": Sparse<Core.FinishTimeWith, "effort">;
  "ride-plan": Sparse<Core.RidePlanWith, "targets" | "round_w" | "least_w" | "greatest_w" | "recovery">;
  "start-here": Record<string, number>;
};

/** What all questions keep, and whatever a link of another version holds beside it. */
export type With = Details & Record<string, JsonObject>;

/** The answer to a question: what it is of any of them, where the id is known only at run time. */
export type AnswerTo<Id extends string> = Id extends keyof Answers ? Answers[Id] : Answers[keyof Answers];

/** The answers by the question's id. */
export type Answers = {
  "speed-for-watts": Core.SpeedForWattsAnswer;
  "power-or-drag": Core.PowerOrDragAnswer;
  "hold-or-fade": Core.HoldOrFadeAnswer;
  "power-curve": Core.PowerCurveAnswer;
  "drag-test": Core.DragTestAnswer;
  "leg-room": Core.LegRoomAnswer;
  "which-position": Core.WhichPositionAnswer;
  "next-gain": Core.NextGainAnswer;
  "finish-time": Core.FinishTimeAnswer;
  "ride-plan": Core.RidePlanAnswer;
  course: Core.CourseAnswer;
};

/** Data that somebody else wrote. */
export type Json = null | boolean | number | string | undefined | Json[] | JsonObject;
export type JsonObject = { [key: string]: Json };

/** Somebody's work, from a file, a link or the device, not yet checked. */
export type Work = { question?: string; scenario: JsonObject; with?: JsonObject; from_link?: boolean };

/** What a link holds, not yet checked. */
export type Linked = { question: string; scenario: JsonObject; with: JsonObject; otherDefaults: boolean };
