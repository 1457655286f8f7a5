// Old-style JavaScript on purpose: a Node too old for the project must still be able to read this file.
// Checks the Node version, installs what is missing, then hands over to the script named by the first
// argument, if there is one. Everything it says goes to stderr, so that stdout stays clean.
'use strict';

var childProcess = require('child_process');
var fs = require('fs');
var path = require('path');

var root = path.join(__dirname, '..');

/** True from Node 20.19 on. */
function isNewEnough(version) {
  var parts = version.split('.');
  var major = Number(parts[0]);
  return major > 20 || (major === 20 && Number(parts[1]) >= 19);
}

/** The packages recorded in a lock file by folder, or null when there is no such file. */
function lockedPackages(file) {
  try {
    return JSON.parse(fs.readFileSync(path.join(root, file), 'utf8')).packages;
  } catch (fault) {
    return null;
  }
}

/** True when node_modules holds every package of the lock file, at its version. */
function isInstalled() {
  var wanted = lockedPackages('package-lock.json');
  var present = lockedPackages('node_modules/.package-lock.json');
  if (!wanted || !present) return false;
  return Object.keys(wanted).every(function (folder) {
    if (folder === '') return true;
    var want = wanted[folder];
    var have = present[folder];
    // npm leaves out the optional packages that belong to another operating system or processor
    if (!have) return want.optional === true;
    return (
      have.version === want.version &&
      have.integrity === want.integrity &&
      fs.existsSync(path.join(root, folder, 'package.json'))
    );
  });
}

/** Runs `npm ci`, with all that npm prints sent to stderr; gives its exit code. */
function install() {
  // development packages are named because NODE_ENV=production would leave them out
  var options = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  var npm = process.env.npm_execpath;
  var settings = { cwd: root, stdio: ['ignore', 2, 2] };
  var run;
  if (npm && /\.c?js$/.test(npm)) {
    run = childProcess.spawnSync(process.execPath, [npm].concat(options), settings);
  } else {
    settings.shell = process.platform === 'win32';
    run = childProcess.spawnSync('npm', options, settings);
  }
  return run.status === null ? 1 : run.status;
}

if (!isNewEnough(process.versions.node)) {
  process.stderr.write(
    'Reheat Bench needs Node 20.19 or later; this is Node ' + process.versions.node + '.\n'
  );
  process.exit(1);
}

if (!isInstalled()) {
  process.stderr.write('Installing the packages in package-lock.json ...\n');
  if (install() !== 0 || !isInstalled()) {
    process.stderr.write(
      'The packages could not be installed; npm says why above. Check the network, then try again.\n'
    );
    process.exit(1);
  }
}

if (process.argv[2]) require('./' + process.argv[2] + '.cjs');
