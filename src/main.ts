import './app.css';
import { mount } from 'svelte';
import App from './App.svelte';
import { beginVisit } from './state/visit.ts';
import FaultNotice from './views/FaultNotice.svelte';

const target = document.getElementById('app');
if (target === null) throw new Error('index.html has no element with id app');

beginVisit().then(
  (visit) => mount(App, { target, props: { visit } }),
  (fault: unknown) =>
    mount(FaultNotice, {
      target,
      props: {
        message: 'What was kept from last time could not be fetched. It is safe.',
        details: String(fault),
        action: 'Try again',
        onaction: () => location.reload(),
      },
    }),
);
