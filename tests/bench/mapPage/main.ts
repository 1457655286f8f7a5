import { mount } from 'svelte';
import '../../../src/app.css';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { type PointPool, startPointWorker } from '../../../src/worker/pointPool.ts';
import { Pool } from '../../../src/worker/pool.ts';
import Page from './Page.svelte';

const target = document.getElementById('map');
if (target === null) throw new Error('index.html has no element with id map');

// ?workers=2 puts another number of workers than this machine's own
const workers = new URLSearchParams(location.search).get('workers');
const a = withSetting(defaultVariant('as found'), 'coil.given', 'area');
const b = withSetting(a, 'coil.area', 1.5);
void mount(Page, {
  target,
  props: {
    first: [
      { letter: 'A', name: 'as found', variant: a },
      { letter: 'B', name: 'larger coil', variant: b },
    ],
    pool: workers === null ? undefined : (new Pool(startPointWorker, Number(workers)) as PointPool),
  },
});
