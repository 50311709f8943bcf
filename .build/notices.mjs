// What of others ships: their licences, as these ask for, and a bill of materials by the CycloneDX standard.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Enums, Models, Serialize, Spec } from '@cyclonedx/cyclonedx-library';

const LINE = '-'.repeat(80);

/** Writes both beside the bundles, and gives their paths. `folders` are those of the packages inside, from `root`. */
export function writeNotices(root, folders) {
  const packages = [...folders].sort().map((folder) => packageIn(join(root, folder)));
  const licences = join(root, 'dist', 'LICENCES.txt');
  const notices = packages.map(({ name, version, license, text }) => `${name} ${version} (${license})\n\n${text}\n`);
  writeFileSync(licences, notices.join(`\n${LINE}\n\n`));
  const materials = join(root, 'dist', 'materials.cdx.json');
  writeFileSync(materials, billOfMaterials(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')), packages));
  return [licences, materials];
}

function packageIn(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  return { name, version, license, text: file === undefined ? '' : readFileSync(join(folder, file), 'utf8').trim() };
}

function billOfMaterials({ name, version, license }, packages) {
  const bom = new Models.Bom();
  bom.metadata.component = componentOf(Enums.ComponentType.Application, { name, version, license });
  for (const one of packages) bom.components.add(componentOf(Enums.ComponentType.Library, one));
  const faces = new Models.Component(Enums.ComponentType.File, 'Liberation Sans', { bomRef: 'liberation-sans' });
  // The terms of this licence are in fonts/LICENSE_LIBERATION.
  faces.licenses.add(new Models.LicenseExpression('GPL-2.0-only WITH Font-exception-2.0'));
  bom.components.add(faces);
  const factory = new Serialize.JSON.Normalize.Factory(Spec.Spec1dot6);
  return `${new Serialize.JsonSerializer(factory).serialize(bom, { sortLists: true, space: 2 })}\n`;
}

/** A package by its address in the registry (the package URL standard). */
function componentOf(type, { name, version, license }) {
  const purl = `pkg:npm/${name.replace('@', '%40')}@${version}`;
  const component = new Models.Component(type, name, { version, purl, bomRef: purl });
  component.licenses.add(new Models.LicenseExpression(license));
  return component;
}
