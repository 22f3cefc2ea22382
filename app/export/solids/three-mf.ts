import { strToU8, zipSync } from 'fflate';
import type { SolidMesh } from '../../../core/setout/mesh.ts';

const TYPES =
  '<?xml version="1.0" encoding="UTF-8"?>\n<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>';
const RELATIONS =
  '<?xml version="1.0" encoding="UTF-8"?>\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>';

/** A solid as 3MF (3MF Core Specification 1.3: one model, one object, millimetres). `title` says which block of whose it is. */
export function threeMfOf({ points, triangles }: SolidMesh, title: string, when: Date): Uint8Array {
  const figure = (value: number) => String(Math.round(value * 1e5) / 1e5 + 0);
  const model = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${escaped(title)}</metadata>`,
    '<resources><object id="1" type="model"><mesh><vertices>',
    ...points.map(([x, y, z]) => `<vertex x="${figure(x)}" y="${figure(y)}" z="${figure(z)}"/>`),
    '</vertices><triangles>',
    ...triangles.map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`),
    '</triangles></mesh></object></resources><build><item objectid="1"/></build></model>',
  ].join('\n');
  const files = {
    '[Content_Types].xml': strToU8(TYPES),
    '_rels/.rels': strToU8(RELATIONS),
    '3D/3dmodel.model': strToU8(model),
  };
  return zipSync(files, { mtime: when });
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
