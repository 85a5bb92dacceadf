'use strict';
// Everything works without this but what moves by itself: news from the bench, clocks that run and ring.
(function () {
  document.documentElement.classList.add('scripted');
  var loaded = Date.now();
  var silent = document.getElementById('silent');
  var typed = false;
  var sound = null;

  function wire() {
    document.querySelectorAll('input[type="file"]').forEach(function (input) {
      input.addEventListener('change', function () {
        var file = input.files[0];
        var form = input.form;
        var line = document.getElementById('sending');
        if (!file) {
          return;
        }
        if (file.size > Number(form.dataset.most)) {
          line.textContent = form.dataset.tooLarge;
          line.className = 'wrong';
          input.value = '';
          return;
        }
        line.textContent = 'Sending it to the bench\u2026';
        form.submit();
      });
    });
    document.querySelectorAll('.field input').forEach(function (input) {
      input.addEventListener('input', function () { typed = true; });
    });
    clocks();
  }

  function swap() {
    return fetch(location.pathname + location.search, { cache: 'no-store' }).then(function (answer) {
      if (!answer.ok) {
        location.reload();
        return '';
      }
      return answer.text();
    }).then(function (text) {
      if (!text) {
        return;
      }
      loaded = Date.now();
      var fresh = new DOMParser().parseFromString(text, 'text/html').querySelector('main');
      var old = document.querySelector('main');
      // What a thumb has begun to type stays, as long as it is still about the same.
      if (!fresh || fresh.outerHTML === old.outerHTML || typed && fresh.dataset.key === old.dataset.key) {
        return;
      }
      old.replaceWith(fresh);
      typed = false;
      wire();
    }).catch(function () {});
  }

  function words(millis) {
    var seconds = Math.max(0, Math.ceil(Math.abs(millis) / 1000));
    var hours = Math.floor(seconds / 3600);
    var minutes = Math.floor(seconds % 3600 / 60);
    return hours > 0 ? hours + ' h ' + minutes + ' min' : minutes + ':' + String(seconds % 60).padStart(2, '0');
  }

  function clocks() {
    document.querySelectorAll('[data-left]').forEach(function (clock) {
      var left = Number(clock.dataset.left) - (Date.now() - loaded);
      clock.textContent = left > 0 ? words(left) : 'now';
      if (left <= 0 && !clock.classList.contains('due')) {
        clock.classList.add('due');
        if (Number(clock.dataset.left) > 0) {
          ring();
        }
      }
    });
  }

  function ring() {
    if (navigator.vibrate) {
      navigator.vibrate([400, 200, 400, 200, 400]);
    }
    if (!sound) {
      return;
    }
    for (var i = 0; i < 3; i++) {
      var tone = sound.createOscillator();
      tone.frequency.value = 880;
      tone.connect(sound.destination);
      tone.start(sound.currentTime + i * 0.6);
      tone.stop(sound.currentTime + i * 0.6 + 0.4);
    }
  }

  // A page may only sound after it was touched once.
  document.addEventListener('pointerdown', function () {
    if (!sound && window.AudioContext) {
      sound = new AudioContext();
    }
  });

  var quiet = 0;
  function listen() {
    var news = new EventSource('live');
    news.onmessage = function () {
      clearTimeout(quiet);
      quiet = 0;
      silent.hidden = true;
      swap();
    };
    news.onerror = function () {
      if (!quiet) {
        quiet = setTimeout(function () { silent.hidden = false; }, 4000);
      }
      if (news.readyState === EventSource.CLOSED) {
        news.close();
        setTimeout(listen, 3000);
      }
    };
  }
  document.addEventListener('visibilitychange', function () {
    if (!document.hidden) {
      swap();
    }
  });
  setInterval(clocks, 500);
  wire();
  listen();
}());
