/** What the page knows of the core before it asks, taken from it by the build. */
import type { Tables } from "../types/core.d.ts";

export const fields: Tables["fields"];
export const questions: Tables["questions"];
export const published: Tables["published"];
export const scenario_version: Tables["scenario_version"];
export const usual_events: Tables["usual_events"];
export const usual_metric_events: Tables["usual_metric_events"];
