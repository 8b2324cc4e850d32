/** The books of the page, by name; the English one says which texts a book holds. A new book is one line here and one file in each language. */
export interface Books {
  core: typeof import("./en/core.js").default;
  "drag-test": typeof import("./en/drag-test.js").default;
  embed: typeof import("./en/embed.js").default;
  "finish-time": typeof import("./en/finish-time.js").default;
  "hold-or-fade": typeof import("./en/hold-or-fade.js").default;
  learn: typeof import("./en/learn.js").default;
  "leg-room": typeof import("./en/leg-room.js").default;
  "next-gain": typeof import("./en/next-gain.js").default;
  page: typeof import("./en/page.js").default;
  "power-curve": typeof import("./en/power-curve.js").default;
  "power-or-drag": typeof import("./en/power-or-drag.js").default;
  recordings: typeof import("./en/recordings.js").default;
  "ride-plan": typeof import("./en/ride-plan.js").default;
  save: typeof import("./en/save.js").default;
  shared: typeof import("./en/shared.js").default;
  start: typeof import("./en/start.js").default;
  "speed-for-watts": typeof import("./en/speed-for-watts.js").default;
  sheet: typeof import("./en/sheet.js").default;
  units: typeof import("./en/units.js").default;
  "which-position": typeof import("./en/which-position.js").default;
}

/** A book in another language: the same keys, each a text, or forms where the English one has forms. */
export type Texts<Name extends keyof Books> = {
  [Key in keyof Books[Name]]: Books[Name][Key] extends string ? string : { one: string; many?: string; other: string };
};

/** The names of a text's placeholders, of all its forms. */
type Placeholders<Text> = Text extends string
  ? Text extends `${string}{${infer Name}}${infer Rest}`
    ? Name | Placeholders<Rest>
    : never
  : Text extends object
    ? Placeholders<Text[keyof Text]>
    : never;

/** Values for the placeholders of a text. Where a key is one of several, the values of each of them. */
export type Values<Text, Value> = string extends Text ? Record<string, Value> : { [Name in Placeholders<Text>]: Value };

/** What follows a key: nothing where its text has no placeholder. Forms by a count need the count, whether it is said or not. */
export type Rest<Text, Value> = [Placeholders<Text>] extends [never]
  ? [values?: Record<string, Value>]
  : [values: Values<Text, Value> & Record<string, Value>];
