// @ts-check
/** Reads a recording of a ride in a worker of its own, which is ended when it is done. Nothing of the file leaves the device. */

import { openRecordingsWorker, recordingsModule } from "#recordings";
import { refusal } from "./refusal.js";

/** @typedef {"time_s" | "distance_m" | "speed_m_s" | "power_w" | "elevation_m" | "latitude_deg" | "longitude_deg" | "bearing_deg" | "temperature_c" | "cadence_rpm" | "radius_m" | "wind_share"} ColumnName */
/** Seconds from the first record. @typedef {{ from_s: number, to_s: number }} Span */
/** A number with its kind, as the core's messages have it. @typedef {{ kind: "clock" | "distance", value: number }} Measured */
/** A sentence of the catalogue `recordings`, and the values in it. @typedef {{ text: string, values: Record<string, number | string | Measured> }} Note */
/** Why a file is not read, as a value of the same shape as the core's errors; `place` says where, as far as it is known. @typedef {Note & { kind: "recording", field: "", place: { byte?: number, line?: number, record?: number } }} ReadingError */
/** What is missing in a column is not a number; what is not known in the summary is null; `is_surveyed` where the records are points of a surveyed road. @typedef {{ kind: "fit" | "gpx" | "tcx" | "csv", records: number, columns: Record<ColumnName, Float64Array<ArrayBuffer>>, laps: Span[], rounds: Span[], outline: Record<"time_s" | "east_m" | "north_m", Float64Array<ArrayBuffer>>, stops: Span[], notes: Note[], summary: { elapsed_s: number | null, distance_m: number | null, climb_m: number | null, mean_power_w: number | null }, is_surveyed: boolean }} Recording */

/** The largest file that is read takes a few seconds on a slow phone; one made to be slow is given up. */
const LIMIT_MS = 60_000;

/**
 * Reads a file; `progress` is told the share that was read, or null where that is not known.
 * @param {Blob} file
 * @param {{ progress?: (share: number | null) => void, signal?: AbortSignal, limit_ms?: number, open?: () => Worker, fetched?: () => Promise<WebAssembly.Module> }} [options]
 * @returns {Promise<Recording>}
 * @throws {ReadingError} or what `signal` was aborted with
 */
export function readRecording(
  file,
  { progress, signal, limit_ms = LIMIT_MS, open = openRecordingsWorker, fetched = recordingsModule } = {},
) {
  return new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const worker = opened(open);
    if (!worker) {
      reject(refusal("no_worker"));
      return;
    }
    const aborted = () => end(() => reject(signal?.reason));
    const timer = setTimeout(() => end(() => reject(refusal("took_too_long"))), limit_ms);
    /** @param {() => void} settle */
    function end(settle) {
      clearTimeout(timer);
      signal?.removeEventListener("abort", aborted);
      worker?.terminate();
      settle();
    }
    signal?.addEventListener("abort", aborted);
    let isAtWork = false;
    // What fails before the worker says anything is its loading; afterwards it is the reading.
    worker.onerror = () => end(() => reject(refusal(isAtWork ? "reader_crashed" : "reader_missing")));
    worker.onmessage = ({ data }) => {
      isAtWork = true;
      if (data.recording) end(() => resolve(data.recording));
      else if (data.error) end(() => reject(data.error));
      else if (data.broken) end(() => reject(refusal("reader_missing")));
      else if (data.crashed) end(() => reject(refusal("reader_crashed")));
      else progress?.(data.share);
    };
    fetched().then(
      (module) => worker.postMessage({ file, module }),
      () => end(() => reject(refusal("reader_missing"))),
    );
  });
}

/** Where workers are refused there is none. @param {() => Worker} open */
function opened(open) {
  try {
    return open();
  } catch {
    return null;
  }
}
