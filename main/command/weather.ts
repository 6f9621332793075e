import { readFileSync, statSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { normalsOf } from '../../app/document/seasonInput';
import { serializeGarden } from '../../app/document/serialize';
import { readWeather } from '../../app/document/weather/readWeather';
import { weatherCharacterLimit } from '../../app/document/weather/textLines';
import { textOfBytes } from '../../app/document/weather/textOfBytes';
import { withWeather } from '../../app/document/weather/withWeather';
import { hostSentence } from '../../app/words/messages';
import {
  weatherFailureSentence,
  weatherMergedSentence,
  weatherMergeFailureSentence,
  weatherPreviewLines,
} from '../../app/words/weatherMessages';
import { writeWhole } from '../files';
import { exitCodes } from './exitCodes';
import { fileSentence } from './fileSentence';
import { readGarden } from './gardenFile';
import type { Voice } from './ledger';
import { weatherWishes } from './weatherWishes';

/** A weather file as text; a sentence when the machine does not give it. */
function textOf(file: string, folder: string): { readonly text: string } | string {
  const path = resolve(folder, file);
  const name = basename(path);
  try {
    const found = statSync(path);
    if (found.isDirectory()) return `"${name}" is a folder. Name the weather file in it.`;
    if (found.size > weatherCharacterLimit * 4) {
      return weatherFailureSentence({
        kind: 'too large',
        limit: weatherCharacterLimit,
        unit: 'characters',
      });
    }
    return { text: textOfBytes(readFileSync(path)) };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (code === 'ENOENT' || code === 'ENOTDIR') {
      return `There is no file "${name}" there. Check the name and the folder.`;
    }
    return `"${name}" could not be read (${code}). Check its permissions and the disk it is on.`;
  }
}

/**
 * `weather FILE [--into GARDEN] [--write]`: what a file of measured weather holds and what it would
 * change; with `--write` the garden's file is replaced whole. Nothing is written while anything is
 * to be settled.
 *
 * @param folder the caller's folder, against which both files are resolved
 * @returns the exit code
 */
export async function weather(
  words: readonly string[],
  folder: string,
  voice: Voice,
): Promise<number> {
  const wishes = weatherWishes(words);
  if (typeof wishes === 'string') {
    voice.complain(wishes);
    return exitCodes.usage;
  }
  const text = textOf(wishes.file, folder);
  if (typeof text === 'string') {
    voice.complain(text);
    return exitCodes.file;
  }
  const garden = wishes.into === null ? null : readGarden(wishes.into, folder);
  if (garden && !garden.ok) {
    voice.complain(fileSentence(garden.error));
    return garden.error.kind === 'refused' ? exitCodes.garden : exitCodes.file;
  }
  const normals = garden ? { normals: normalsOf(garden.value) } : {};
  const reading = readWeather(text.text, { ...normals, ...wishes.options });
  if (!reading.ok) {
    voice.complain(weatherFailureSentence(reading.error));
    return exitCodes.weather;
  }
  const { preview, days } = reading.value;
  voice.answer(`${weatherPreviewLines(preview).join('\n')}\n`);
  if (!garden || wishes.into === null) return exitCodes.done;
  const merged = withWeather(garden.value, days);
  if (!merged.ok) {
    voice.complain(weatherMergeFailureSentence(merged.error));
    return exitCodes.weather;
  }
  const { name } = garden.value.garden;
  if (!wishes.write) {
    voice.answer(`${weatherMergedSentence(merged.value, name, false)} Add --write to keep them.\n`);
    return exitCodes.done;
  }
  if (preview.unclear.length > 0) {
    voice.complain(
      'Nothing was written: settle the above first, with --dates, --temperature or --rain.',
    );
    return exitCodes.weather;
  }
  const path = resolve(folder, wishes.into);
  const written = await writeWhole(path, serializeGarden(merged.value.garden), basename(path));
  if (!written.ok) {
    voice.complain(hostSentence('write', written.error));
    return exitCodes.file;
  }
  voice.answer(`${weatherMergedSentence(merged.value, name, true)}\n`);
  return exitCodes.done;
}
