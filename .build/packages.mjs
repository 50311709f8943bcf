import { readFileSync } from 'node:fs';
import { transform } from 'esbuild';

/** The package that reads fonts has an unpacker for those of the web, with a dictionary of half a megabyte; ours are not packed. */
export const withoutPackedFonts = {
  name: 'without-packed-fonts',
  setup(build) {
    build.onResolve({ filter: /^brotli\/decompress\.js$/ }, ({ path }) => ({
      path,
      namespace: 'without-packed-fonts',
    }));
    build.onLoad({ filter: /.*/, namespace: 'without-packed-fonts' }, () => ({
      contents: "module.exports = () => { throw new Error('Packed fonts are not read.'); };",
    }));
  },
};

/** Local names in packages are shortened. Our own stay what they are, for traces of faults. */
export const shortNamesInPackages = {
  name: 'short-names-in-packages',
  setup(build) {
    build.onLoad({ filter: /[/\\]node_modules[/\\].*\.[cm]?js$/ }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, 'utf8'), {
        loader: 'js',
        minifyIdentifiers: true,
        legalComments: 'inline',
        charset: 'utf8',
      });
      return { contents: code, loader: 'js' };
    });
  },
};
