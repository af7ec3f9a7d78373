import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { shipWorker } from '../../sw/build/precache.ts';

/** A build of another version beside the one under test; it is thrown away with `remove`. */
export interface Build {
  folder: string;
  /** Path of one of its files. */
  path(name: string): string;
  remove(): void;
}

/**
 * A build of the next version: the same files but for one mark in the page, and the worker that lists them.
 * @param change what else the next version does otherwise; the worker is made after it
 */
export async function nextBuild(change: (build: Build) => void = () => {}, mark = 'next'): Promise<Build> {
  const folder = mkdtempSync(join(tmpdir(), 'pinchbolt-next-'));
  const build: Build = {
    folder,
    path: (name) => join(folder, name),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
  cpSync('dist', folder, { recursive: true });
  const page = build.path('index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace('<html lang="en">', `<html lang="en" data-version="${mark}">`),
  );
  change(build);
  await shipWorker(folder, resolve('sw/index.ts'));
  return build;
}
